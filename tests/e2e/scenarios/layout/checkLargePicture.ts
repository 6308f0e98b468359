import assert from 'node:assert/strict';
import { checkScreen } from '../../harness/accessible.ts';
import type { App } from '../../harness/app.ts';
import type { Bench } from '../../harness/bench.ts';
import type { Report } from '../../harness/report.ts';
import { clickCell } from '../../harness/reviewScreen.ts';
import { look, overlaps } from './boxes.ts';

/** The picture alone over a slim bar; flags are dropped, named and noted there, and the way back is one key. */
export async function checkLargePicture(app: App, bench: Bench, report: Report, source: string): Promise<void> {
  const { page } = app;
  await clickCell(app, 'bracing', 2);
  const video = await page.evaluateHandle(() => document.querySelector('video'));
  await page.keyboard.press('z');
  const bar = page.getByRole('region', { name: 'Judging' });
  await bar.waitFor();
  await report.check(
    'a large picture leaves a slim bar with the severities, the cell at hand and the score',
    async () => {
      const seen = await look(app);
      assert.deepEqual(Object.keys(seen.parts).sort(), ['bar', 'stage']);
      assert.deepEqual(overlaps(seen), []);
      assert.ok((seen.parts.bar?.height ?? 0) <= 44, `a bar of ${seen.parts.bar?.height} px`);
      assert.ok(seen.content.height >= 0.9 * seen.window.height, `a picture of ${seen.content.height} px`);
      for (const name of ['Fine', 'Keep', 'Prefer', 'Adjust', 'Correct', 'Stop']) {
        assert.ok(await bar.getByRole('button', { name: new RegExp(`^${name}`) }).isVisible(), name);
      }
      assert.match((await page.getByTestId('cell-at-hand').textContent()) ?? '', /^Bracing, rep 2/);
      assert.match((await bar.textContent()) ?? '', /\d\d\.\d points/);
      assert.ok(
        await page.evaluate((before) => before === document.querySelector('video'), video),
        'the video is not loaded anew',
      );
      await bench.picture(app, '20-large-1280');
    },
  );
  await checkScreen(app, report, source, 'large picture');
  await report.check('there a flag is dropped and named over the picture, and its note is typed', async () => {
    await page.keyboard.press('2');
    await page.locator('.large-cell .fault-picker').waitFor();
    await bench.picture(app, '20-large-fault-1280');
    await page.keyboard.press('Escape');
    await page.locator('.fault-picker').waitFor({ state: 'detached' });
    await page.keyboard.press('n');
    await page.keyboard.type('Breath held');
    await bench.picture(app, '20-large-note-1280');
    const note = page.locator('.large-cell textarea').first();
    assert.equal(await note.inputValue(), 'Breath held');
    assert.ok(((await note.boundingBox())?.height ?? 0) > 16, 'the note is seen while it is typed');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
  });
  await report.check('its key brings the scorecard back', async () => {
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press('z');
    await page.getByRole('grid', { name: 'Scorecard' }).waitFor();
  });
}
