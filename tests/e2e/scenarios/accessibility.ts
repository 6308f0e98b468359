import assert from 'node:assert/strict';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import type { Report } from '../harness/report.ts';
import { clickCell, openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';

/** Every screen and dialog through a general accessibility checker, and the keyboard's way round the review. */
export const accessibility: Scenario = {
  name: 'accessibility',
  run: async (bench, report) => {
    const source = await checkerSource();
    const first = await bench.launch(bench.newFolder('accessible-first'));
    await first.page.getByRole('button', { name: 'Start' }).waitFor();
    await checkScreen(first, report, source, 'first start');
    await first.close();

    const app = await bench.launch(await bench.demoFolder('accessible'));
    const { page } = app;
    await page
      .getByRole('row', { name: /Robin Thale/ })
      .first()
      .waitFor();
    await checkScreen(app, report, source, 'desk');
    for (const name of ['Add trainee', 'Add session']) {
      await page.getByRole('button', { name, exact: true }).first().click();
      await page.getByRole('dialog').waitFor();
      await checkScreen(app, report, source, `dialog: ${name}`);
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
    }

    const { sessions } = await app.ask('desk.sessions', {});
    await openReview(app, sessions[0]?.id ?? '');
    await clickCell(app, 'depth', 1);
    await page.getByTestId('flag').first().waitFor();
    await checkScreen(app, report, source, 'review');
    await page.keyboard.press('2');
    await page.locator('.fault-picker').waitFor();
    await bench.picture(app, '5-fault-list');
    await checkScreen(app, report, source, 'fault list');
    await page.keyboard.press('Escape');
    await page.keyboard.press('?');
    await page.getByRole('dialog').waitFor();
    await bench.picture(app, '8-keys');
    await checkScreen(app, report, source, 'key sheet');
    await page.keyboard.press('Escape');
    for (const [key, name] of [
      ['/', 'palette'],
      ['Control+h', 'history'],
    ] as const) {
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      await page.keyboard.press(key);
      await page.getByRole('dialog').waitFor();
      await checkScreen(app, report, source, name);
      await page.keyboard.press('Escape');
    }
    await page.getByRole('dialog').waitFor({ state: 'detached' });

    for (const [button, name] of [
      ['Session notes', 'session notes'],
      ['Edit the plan', 'plan'],
      ['Import clips', 'clips to import'],
    ] as const) {
      await page.getByRole('button', { name: button, exact: true }).first().click();
      await page.getByRole('dialog').waitFor();
      await checkScreen(app, report, source, `dialog: ${name}`);
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
    }

    await page.getByRole('button', { name: 'Edit the plan', exact: true }).click();
    await page.getByRole('button', { name: 'Set by set…', exact: true }).click();
    await page.getByRole('textbox', { name: 'Reps, set 1', exact: true }).waitFor();
    await bench.picture(app, '9-plan-set-by-set');
    await checkScreen(app, report, source, 'dialog: plan, set by set');
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });

    await report.check('the Tab key goes round the whole review and misses no part', async () => {
      const { names, missed, unmarked } = await tabRound(app);
      for (const part of [
        'Scorecard',
        'Mark the cell',
        'More',
        'Picture',
        'Position in the clip',
        'Letter',
        'Exercise',
      ]) {
        assert.ok(
          names.some((stop) => stop.includes(part)),
          `${part} is not among ${names.join(' | ')}`,
        );
      }
      assert.deepEqual(missed, [], 'controls that the Tab key never reaches');
      assert.deepEqual(unmarked, [], 'controls that do not show the focus');
    });

    await page.getByRole('button', { name: 'Letter' }).click();
    await page.getByRole('button', { name: 'Save', exact: true }).waitFor();
    await checkScreen(app, report, source, 'letter');
    await page.getByRole('button', { name: 'Edit letter' }).click();
    await page
      .getByRole('button', { name: /^Edit: / })
      .first()
      .waitFor();
    await checkScreen(app, report, source, 'letter being edited');
    await page
      .getByRole('button', { name: /^Edit: / })
      .first()
      .click();
    await page.getByRole('textbox', { name: 'Paragraph in your own words' }).waitFor();
    await checkScreen(app, report, source, 'paragraph being edited');
    await page.getByRole('button', { name: 'Edit letter' }).click();
    await page.getByRole('button', { name: 'Set grade by hand: session' }).click();
    await page.getByRole('dialog').waitFor();
    await checkScreen(app, report, source, 'dialog: grade by hand');
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    const letter = await page.locator('iframe').getAttribute('src');
    await page.getByRole('button', { name: 'Sheet', exact: true }).click();
    await page.locator('iframe[title="Preview: Sheet"]').waitFor();
    await checkScreen(app, report, source, 'sheet');
    const sheet = await page.locator('iframe').getAttribute('src');
    await checkDocument(app, report, source, 'letter', letter ?? '');
    await checkDocument(app, report, source, 'sheet', sheet ?? '');
    await app.close();
  },
};

/** The document itself, which the preview closes off: put in the page's place, as a browser would open the file. */
async function checkDocument(app: App, report: Report, source: string, name: string, address: string): Promise<void> {
  const html = await app.page.evaluate(async (from) => (await fetch(from)).text(), address);
  const session = await app.page.context().newCDPSession(app.page);
  await session.send('Page.setBypassCSP', { enabled: true });
  await app.page.reload();
  await app.page.evaluate((text) => {
    document.open();
    document.write(text);
    document.close();
  }, html);
  await app.page.getByRole('heading', { level: 1 }).waitFor();
  await checkScreen(app, report, source, `the ${name} as a file`);
  await app.page.reload();
  await session.detach();
}

type TabRound = {
  /** What the Tab key stops at: its own name, and the names of what it stands in. */
  readonly names: readonly string[];
  readonly missed: readonly string[];
  readonly unmarked: readonly string[];
};

const mostStops = 150;

/** Presses the Tab key until it comes round to where it began. */
async function tabRound(app: App): Promise<TabRound> {
  const names: string[] = [];
  const unmarked: string[] = [];
  await app.page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  for (let presses = 0; presses < mostStops; presses += 1) {
    await app.page.keyboard.press('Tab');
    const stop = await app.page.evaluate(() => {
      const active = document.activeElement;
      if (active === null || active === document.body) return null;
      if (active.hasAttribute('data-stopped')) return 'round';
      active.setAttribute('data-stopped', '');
      const found: string[] = [];
      for (let at: Element | null = active; at !== null && at !== document.body; at = at.parentElement) {
        const own = at.getAttribute('aria-label') ?? (at.matches('button, label') ? at.textContent : null);
        if (own !== null) found.push(own.trim());
      }
      const { outlineStyle, outlineWidth } = getComputedStyle(active);
      return { name: found.join(' in '), marked: outlineStyle !== 'none' && outlineWidth !== '0px' };
    });
    if (stop === 'round') break;
    if (stop === null) continue;
    names.push(stop.name);
    if (!stop.marked) unmarked.push(stop.name);
  }
  const missed = await app.page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('button, select, input, textarea, a[href], summary, [tabindex="0"]')]
      .filter((control) => control.tabIndex >= 0 && !control.matches(':disabled') && control.checkVisibility())
      .filter((control) => !control.hasAttribute('data-stopped'))
      .map((control) => control.getAttribute('aria-label') ?? control.textContent ?? control.tagName),
  );
  return { names, missed, unmarked };
}
