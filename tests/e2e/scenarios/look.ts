import assert from 'node:assert/strict';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import type { Bench } from '../harness/bench.ts';
import type { Report } from '../harness/report.ts';
import { openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';

const sizes = [
  { width: 1280, height: 720 },
  { width: 3840, height: 2160 },
] as const;

/** Every screen by day and by night, small and large, and with text at twice its size: nothing cut, nothing to scroll sideways. */
export const look: Scenario = {
  name: 'look',
  run: async (bench, report) => {
    const app = await bench.launch(await bench.demoFolder('look'));
    const { page } = app;
    const { sessions } = await app.ask('desk.sessions', {});
    const session = sessions[0];
    assert.ok(session !== undefined);
    const toDesk = () => page.getByRole('button', { name: 'Desk' }).click();
    const screens: readonly (readonly [string, () => Promise<void>])[] = [
      ['desk', () => page.getByRole('heading', { name: 'Desk', exact: true }).waitFor()],
      [
        'trainee',
        async () => {
          await page
            .getByRole('button', { name: /^History:/ })
            .first()
            .click();
          await page.getByRole('heading', { name: 'Trends' }).waitFor();
        },
      ],
      [
        'agreement',
        async () => {
          await toDesk();
          await page.getByRole('button', { name: 'Agreement' }).click();
          await page.getByRole('heading', { name: 'Agreement' }).waitFor();
        },
      ],
      [
        'review',
        async () => {
          await toDesk();
          await openReview(app, session.id);
        },
      ],
      [
        'covers',
        async () => {
          await page.keyboard.press('Shift+B');
          await page.getByRole('button', { name: 'Add a cover in the middle of the picture' }).waitFor();
        },
      ],
      [
        'compare',
        async () => {
          await page.getByRole('button', { name: 'Compare' }).click();
          await page.locator('[data-testid="right-readout"][data-settled="true"]').waitFor();
        },
      ],
      [
        'letter',
        async () => {
          await page.getByRole('button', { name: 'Review' }).click();
          await page.getByRole('button', { name: 'Letter' }).click();
          await page.getByRole('button', { name: 'Edit letter' }).waitFor();
        },
      ],
      [
        'handover',
        async () => {
          await page.getByRole('button', { name: 'Hand over' }).click();
          await page.getByRole('button', { name: 'Hand over 1 session…' }).waitFor();
        },
      ],
    ];
    const source = await checkerSource();
    for (const theme of ['light', 'dark'] as const) {
      await page.evaluate((chosen) => localStorage.setItem('rackside.theme', chosen), theme);
      await page.reload();
      for (const [name, go] of screens) {
        await go();
        for (const size of sizes) {
          await page.setViewportSize(size);
          await bench.picture(app, `15-${name}-${theme}-${size.width}`);
        }
        await page.setViewportSize(sizes[0]);
        await report.check(`${name}, ${theme}, 1280 × 720: nothing is cut or scrolls sideways`, () => checkRoom(app));
        await checkScreen(app, report, source, `${name}, ${theme}`);
      }
      await page.getByRole('button', { name: 'Letter', exact: true }).click();
      await page.getByRole('button', { name: 'Review' }).click();
      await toDesk();
    }
    await openReview(app, session.id);
    await checkReviewInGerman(app, bench, report);
    await toDesk();
    // Zoomed to twice its size, a window of 1920 × 1080 has room for 960 × 540 points.
    await page.setViewportSize({ width: 960, height: 540 });
    for (const [name, go] of screens) {
      await go();
      await bench.picture(app, `15-${name}-large-text`);
      await report.check(`${name}, text at twice its size: nothing is cut or scrolls sideways`, () => checkRoom(app));
    }
    await app.close();
  },
};

/** What the review shows in German, at the smallest size: longer words, and still nothing cut; no action needs two lines. */
async function checkReviewInGerman(app: App, bench: Bench, report: Report): Promise<void> {
  const { page } = app;
  const change = async (language: string): Promise<void> => {
    await page.keyboard.press('/');
    await page.keyboard.type(language);
    await page.keyboard.press('Enter');
  };
  await change('Deutsch');
  await page.getByRole('button', { name: 'Abspielen', exact: true }).waitFor();
  for (const [name, key, shown] of [
    ['key sheet', '?', page.getByRole('dialog', { name: 'Tasten' })],
    ['palette', '/', page.getByRole('dialog', { name: 'Aktion suchen' })],
    ['drawing', 'd', page.getByRole('radio', { name: 'Freihand' })],
    ['set-up', 'i', page.getByRole('heading', { name: 'Suchhilfe' })],
    ['covers', 'Shift+B', page.getByRole('heading', { name: 'Abdeckungen' })],
  ] as const) {
    await page.keyboard.press(key);
    await shown.waitFor();
    await bench.picture(app, `15-${name.replace(' ', '-')}-german-1280`);
    await report.check(`${name} in German, 1280 × 720: nothing is cut or scrolls sideways`, () => checkRoom(app));
    if (name === 'palette') await report.check('every action in German takes one line', () => checkOneLine(app));
    await page.keyboard.press('Escape');
    await shown.waitFor({ state: 'hidden' });
  }
  await change('English');
  await page.getByRole('button', { name: 'Play', exact: true }).waitFor();
}

/** No label in the palette wraps; a reason below it may. */
async function checkOneLine(app: App): Promise<void> {
  const wrapped = await app.page.evaluate(() =>
    [...document.querySelectorAll('[role="option"] > span')].flatMap(({ firstChild }) => {
      if (firstChild === null) return [];
      const label = document.createRange();
      label.selectNode(firstChild);
      return label.getClientRects().length > 1 ? [firstChild.textContent ?? ''] : [];
    }),
  );
  assert.deepEqual(wrapped, []);
}

/** The page itself never scrolls sideways, and no button cuts its words. */
async function checkRoom(app: App): Promise<void> {
  const { wide, cut } = await app.page.evaluate(() => ({
    wide: Math.max(
      ...[document.documentElement, ...document.querySelectorAll('main, main > *')].map(
        (part) => part.scrollWidth - part.clientWidth,
      ),
    ),
    cut: [...document.querySelectorAll<HTMLElement>('button, select')]
      .filter((control) => control.checkVisibility() && control.scrollWidth > control.clientWidth + 1)
      .map((control) => control.textContent?.trim().slice(0, 40) ?? ''),
  }));
  assert.ok(wide <= 0, `the page is ${wide} px wider than the window`);
  assert.deepEqual(cut, []);
}
