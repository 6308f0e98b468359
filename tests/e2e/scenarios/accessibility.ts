import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { App } from '../harness/app.ts';
import type { Report } from '../harness/report.ts';
import { clickCell, openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';

type Finding = { readonly id: string; readonly impact: string; readonly targets: readonly string[] };

/** Every screen and dialog through a general accessibility checker, and the keyboard's way round the review. */
export const accessibility: Scenario = {
  name: 'accessibility',
  run: async (bench, report) => {
    const source = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
    const first = await bench.launch(bench.newFolder('accessible-first'));
    await first.page.getByRole('button', { name: 'Start' }).waitFor();
    await checkScreen(first, report, source, 'first start');
    await first.close();

    const app = await bench.launch(await bench.demoFolder('accessible'));
    const { page } = app;
    await page.getByRole('row', { name: /Robin Thale/ }).waitFor();
    await checkScreen(app, report, source, 'desk');
    for (const name of ['Add trainee', 'Add session', 'Add clips']) {
      await page.getByRole('button', { name, exact: true }).first().click();
      await page.getByRole('dialog').waitFor();
      await checkScreen(app, report, source, `dialog: ${name}`);
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
    }

    const { sessions } = await app.ask('desk.get', {});
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

    await report.check('the Tab key goes round the whole review and misses no part', async () => {
      const parts = await tabStops(app);
      for (const part of ['Scorecard', 'Mark reps', 'Position in the clip', 'Letter', 'Play', 'Exercise']) {
        assert.ok(
          parts.some((stop) => stop.includes(part)),
          `${part} is not among ${parts.join(' | ')}`,
        );
      }
    });

    await page.getByRole('button', { name: 'Letter' }).click();
    await page.getByRole('button', { name: 'Save PDF' }).waitFor();
    await checkScreen(app, report, source, 'letter');
    await app.close();
  },
};

function checkScreen(app: App, report: Report, source: string, name: string): Promise<void> {
  return report.check(`${name}: nothing serious or critical`, async () => {
    await app.page.evaluate(source);
    const findings = await app.page.evaluate(async (): Promise<Finding[]> => {
      const axe = Reflect.get(window, 'axe') as {
        run: (root: Document, options: object) => Promise<{ violations: AxeViolation[] }>;
      };
      type AxeViolation = { id: string; impact: string | null; nodes: { target: unknown[] }[] };
      const { violations } = await axe.run(document, { iframes: false });
      return violations.map(({ id, impact, nodes }) => ({
        id,
        impact: impact ?? '',
        targets: nodes.slice(0, 4).map(({ target }) => target.join(' ')),
      }));
    });
    const grave = findings.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    assert.deepEqual(grave, []);
  });
}

/** What the Tab key stops at, once round: its own name, and the names of what it stands in. */
async function tabStops(app: App): Promise<string[]> {
  const stops: string[] = [];
  await app.page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  for (let presses = 0; presses < 80; presses += 1) {
    await app.page.keyboard.press('Tab');
    const stop = await app.page.evaluate(() => {
      const names: string[] = [];
      for (let at = document.activeElement; at !== null && at !== document.body; at = at.parentElement) {
        const own = at.getAttribute('aria-label') ?? (at.matches('button, label') ? at.textContent : null);
        if (own !== null) names.push(own.trim());
      }
      return names.join(' in ');
    });
    stops.push(stop);
  }
  return [...new Set(stops)];
}
