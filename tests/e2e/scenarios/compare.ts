import assert from 'node:assert/strict';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import { goToFrame, openReview, picture } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** Two reps side by side, the right one always at the phase of the left one. */
export const compare: Scenario = {
  name: 'compare',
  run: async (bench, report) => {
    const app = await bench.launch(await bench.demoFolder('compare'));
    const { page } = app;
    const { sessions } = await app.ask('desk.sessions', {});
    // The earliest: no clip of another session stands before it.
    const sessionId = sessions.at(-1)?.id ?? '';
    await openReview(app, sessionId);
    const { review } = await app.ask('review.get', { sessionId });
    const reps = review.entries[0]?.clips[0]?.reps ?? [];
    const frameOf = (moment: (typeof reps)[number]['start'] | undefined): number =>
      moment !== undefined && 'frame' in moment ? moment.frame : Number.NaN;
    const [first, second] = reps;

    await report.check('the rep on screen is laid beside the first rep, both at their start', async () => {
      await goToFrame(app, frameOf(second?.start));
      await page.keyboard.press('Shift+C');
      await at(app, 'left', frameOf(second?.start));
      await at(app, 'right', frameOf(first?.start));
    });

    await report.check('stepping to the stretched end of one brings the other to its own', async () => {
      const away = frameOf(second?.stretchedEnd) - frameOf(second?.start);
      for (let ten = 0; ten < Math.floor(away / 10); ten += 1) await page.keyboard.press('PageDown');
      for (let one = 0; one < away % 10; one += 1) await page.keyboard.press('Shift+ArrowRight');
      await at(app, 'left', frameOf(second?.stretchedEnd));
      await at(app, 'right', frameOf(first?.stretchedEnd));
      await bench.picture(app, '14-compare');
    });

    await report.check('another rep is chosen on either side, at the phase of the left one', async () => {
      const third = reps[2];
      await page.getByRole('group', { name: 'Right: rep' }).getByRole('button', { name: '3' }).click();
      await at(app, 'right', frameOf(third?.stretchedEnd));
      await at(app, 'left', frameOf(second?.stretchedEnd));
      await page.getByRole('group', { name: 'Left: rep' }).getByRole('button', { name: '1' }).click();
      await at(app, 'left', frameOf(first?.stretchedEnd));
      await at(app, 'right', frameOf(third?.stretchedEnd));
    });

    await report.check('both pictures are zoomed as one, and each is mirrored by itself', async () => {
      const shown = (side: string) => page.getByTestId(`${side}-picture`).evaluate((one) => one.style.transform);
      await page.keyboard.press('Control+Shift+U');
      await until('the zoom', async () => /scale\(1\.4/.test(await shown('left')));
      assert.equal(await shown('right'), await shown('left'));
      await page.keyboard.press('Shift+J');
      await page.locator('section[aria-label="Right"] [data-mirrored="true"]').waitFor();
      assert.equal(await page.locator('section[aria-label="Left"] [data-mirrored="true"]').count(), 0);
      await bench.picture(app, '14-compare-zoomed');
      await page.keyboard.press('Shift+X');
      await page.keyboard.press('Shift+J');
    });

    await report.check('by time, the other clip is as long into its rep', async () => {
      await page.keyboard.press('Shift+Z');
      await page.getByRole('button', { name: 'By time' }).waitFor();
      const since = frameOf(first?.stretchedEnd) - frameOf(first?.start);
      await at(app, 'right', frameOf(reps[2]?.start) + since);
      await page.keyboard.press('Shift+Z');
      await at(app, 'right', frameOf(reps[2]?.stretchedEnd));
    });
    await checkScreen(app, report, await checkerSource(), 'compare');

    await report.check('the button says what it does next, playing or not', async () => {
      const both = page.getByRole('group', { name: 'Both clips' });
      await both.getByRole('button', { name: 'Play', exact: true }).click();
      await both.getByRole('button', { name: 'Pause', exact: true }).click();
      await both.getByRole('button', { name: 'Play', exact: true }).waitFor();
    });

    await report.check('the only clip, at its first rep, has another rep beside it', async () => {
      await page.getByRole('button', { name: 'Review' }).click();
      await picture(app);
      await goToFrame(app, frameOf(first?.start));
      await page.keyboard.press('Shift+C');
      await at(app, 'left', frameOf(first?.start));
      await at(app, 'right', frameOf(second?.start));
    });
    await report.check(
      'a clip of an earlier session is beside it, with what was measured and remarked then',
      async () => {
        const newest = sessions[0]?.id ?? '';
        await page.getByRole('button', { name: 'Review' }).click();
        await picture(app);
        await page.getByRole('button', { name: 'Desk' }).click();
        await openReview(app, newest);
        await page.keyboard.press('Shift+C');
        await page.getByTestId('right-readout').and(page.locator('[data-settled="true"]')).waitFor();
        await page.locator('.compare-caption').nth(1).waitFor();
        await bench.picture(app, '14-compare-then-and-now');
      },
    );
    await app.close();
  },
};

async function at(app: App, side: 'left' | 'right', frame: number): Promise<void> {
  assert.ok(Number.isInteger(frame));
  await until(`${side} at frame ${frame}`, async () => {
    const readout = app.page.getByTestId(`${side}-readout`);
    return (
      (await readout.getAttribute('data-settled')) === 'true' &&
      Number(await readout.getAttribute('data-frame')) === frame
    );
  });
}
