import assert from 'node:assert/strict';
import type { App } from '../harness/app.ts';
import { addOneClip, footage } from '../harness/oneClip.ts';
import { openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

const mostKeys = 30;

/** The keys that write a note. */
const noteOf = (words: string): readonly string[] => ['n', ...words, 'Escape'];

/** A whole set judged without a mouse, and the ways round the desk by keyboard. */
export const flow: Scenario = {
  name: 'flow',
  run: async (bench, report) => {
    const app = await bench.launch(bench.newFolder('flow'));
    const { page } = app;
    const { sessionId, clipId } = await addOneClip(app, footage.squat);
    for (const frame of [30, 90, 150, 210, 270]) await app.ask('reps.mark', { clipId, edge: 'start', frame });
    await page.reload();
    await openReview(app, sessionId);

    await report.check(
      `five reps, four flags, two notes, everything looked at: at most ${mostKeys} keystrokes`,
      async () => {
        const keys = counted(app);
        // Depth on reps 1 and 2 at once: chosen, marked, its fault picked from the list.
        await keys('x', 'ArrowRight', '3', 'Enter', ...noteOf('high'));
        // The tempo of rep 3, then the same on rep 4.
        await keys('ArrowRight', 'ArrowDown', '2', 'Enter', 'c');
        // The pause of rep 5: wanted, not prescribed.
        await keys('ArrowRight', 'ArrowDown', '1', 'Enter');
        // Praise for the bar path of rep 5.
        await keys('ArrowDown', 'k', ...noteOf('calm'));
        await keys('Shift+F');
        assert.ok(keys.count() <= mostKeys, `${keys.count()} keystrokes`);
        const { review } = await app.ask('review.get', { sessionId });
        const flags = review.entries[0]?.flags ?? [];
        assert.deepEqual(
          flags.map(({ criterion, severity, reps }) => [criterion, severity, reps]),
          [
            ['depth', 'correct', [1, 2]],
            ['eccentricTempo', 'adjust', [3, 4]],
            ['pauses', 'prefer', [5]],
            ['barPath', 'keep', [5]],
          ],
        );
        assert.deepEqual(
          flags.map(({ fault }) => fault !== null),
          [true, true, true, false],
        );
        assert.deepEqual(
          flags.map(({ note }) => note),
          ['high', '', '', 'calm'],
        );
        const grade = await app.ask('grade.get', { sessionId });
        assert.equal(grade.entries[0]?.coverage, 1);
        await page.getByText('All cells looked at.').waitFor();
        process.stdout.write(`        ${keys.count()} keystrokes\n`);
        await bench.picture(app, '11-flow');
      },
    );

    await report.check('the rest being fine is one act: one undo takes all its ticks back', async () => {
      await page.keyboard.press('Control+z');
      await page.getByText(/cells left to look at/).waitFor();
      await page.keyboard.press('u');
      const words = await page.locator('[data-cursor="true"]').getAttribute('aria-label');
      assert.match(words ?? '', /nothing yet/);
      await page.keyboard.press('Shift+F');
      await page.getByText('All cells looked at.').waitFor();
    });

    await report.check('an act is found by its name and done', async () => {
      await page.keyboard.press('/');
      await page.getByRole('combobox', { name: 'Type an action' }).fill('whole set');
      await bench.picture(app, '11-palette');
      await page.keyboard.press('Enter');
      await page.locator('[data-cursor="true"][data-rep="set"]').waitFor();
    });

    await report.check('what was done can be gone back to, and forward again', async () => {
      await page.keyboard.press('Control+h');
      const panel = page.getByRole('dialog', { name: 'History' });
      // The newer of the first flag's two changes: its note, after its fault.
      const changed = panel.getByRole('button', { name: /^Back to here: Flag( changed)?: Short of depth/ });
      await changed.first().click();
      await until('one flag', async () => (await flagsOf(app, sessionId)) === 1);
      await bench.picture(app, '11-history');
      await panel.getByRole('button', { name: /^Redo up to here: Rest marked fine/ }).click();
      await until('four flags', async () => (await flagsOf(app, sessionId)) === 4);
      await page.keyboard.press('Escape');
    });

    await report.check('a key is changed, a taken one refused, and the change outlives the window', async () => {
      await page.keyboard.press('?');
      const sheet = page.getByRole('dialog', { name: 'Keys' });
      await sheet.locator('[data-command="fine"]').getByRole('button', { name: 'Change' }).click();
      await page.keyboard.press('k');
      await sheet.getByText(/“Flag as keep.*” already uses K/).waitFor();
      await sheet.locator('[data-command="fine"]').getByRole('button', { name: 'Change' }).click();
      await page.keyboard.press('9');
      await sheet.locator('[data-command="fine"][data-own="true"]').waitFor();
      await bench.picture(app, '11-keys');
      await page.keyboard.press('Escape');
      await page.reload();
      await openReview(app, sessionId);
      await page.getByRole('button', { name: 'Fine', exact: true }).filter({ hasText: '9' }).waitFor();
      await page.keyboard.press('?');
      await sheet.getByRole('button', { name: 'Reset all keys' }).click();
      await page.keyboard.press('Escape');
    });
    await app.close();
  },
};

const flagsOf = async (app: App, sessionId: string): Promise<number> =>
  (await app.ask('review.get', { sessionId })).review.entries[0]?.flags.length ?? 0;

/** Presses keys one after the other, each once what the last one did is saved, and counts them. */
function counted(app: App) {
  let count = 0;
  const press = async (...keys: readonly string[]): Promise<void> => {
    for (const key of keys) {
      await app.page.keyboard.press(key);
      count += 1;
      await until('everything to be saved', async () => (await app.page.getByText('Saving').count()) === 0);
      // A severity key opens the list of faults once its flag is saved.
      if (/^[1-4]$/.test(key)) await app.page.getByRole('combobox', { name: 'Filter the faults' }).waitFor();
      if (key === 'Enter')
        await app.page.getByRole('combobox', { name: 'Filter the faults' }).waitFor({ state: 'detached' });
    }
  };
  return Object.assign(press, { count: () => count });
}
