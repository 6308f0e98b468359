import assert from 'node:assert/strict';
import { checkScreen } from '../../harness/accessible.ts';
import type { App } from '../../harness/app.ts';
import { finishedJob } from '../../harness/jobs.ts';
import { pointOnScreen } from '../../harness/pointOnScreen.ts';
import type { Report } from '../../harness/report.ts';
import { goToFrame } from '../../harness/reviewScreen.ts';
import { until } from '../../harness/until.ts';
import { measuresOf } from './measuresOf.ts';

type Story = {
  readonly app: App;
  readonly report: Report;
  readonly source: string;
  readonly clipId: string;
  readonly picture: (name: string) => Promise<string>;
};

/** Pointing out what can't be found: by keys alone, and with the mouse. */
export async function checkSetUp({ app, report, source, clipId, picture }: Story): Promise<void> {
  const { page } = app;
  const setUp = async () => (await measuresOf(app, clipId)).setUp;

  await report.check('keys alone: an upright is placed, moved and set, and undo takes it back', async () => {
    await letGo(app);
    await page.keyboard.press('i');
    await page.getByRole('radio', { name: 'Disc', exact: true }).waitFor();
    for (let step = 0; step < 5; step += 1) await page.keyboard.press('ArrowDown');
    assert.equal(await page.getByRole('radio', { name: 'Upright' }).isChecked(), true);
    await page.keyboard.press('Enter');
    await page.locator('[data-set-up-point="0"]:focus').waitFor();
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('ArrowRight');
    await picture('16-set-up');
    await checkScreen(app, report, source, 'measuring set-up');
    await page.keyboard.press('Enter');
    const plumb = await until('the upright', async () => (await setUp()).plumb);
    // The picture is 854 wide: its middle is 427.
    assert.equal(plumb.top.xPx, 427 + 11);
    assert.equal(plumb.bottom.xPx, 427);
    await page.getByTestId('set-up-line').waitFor();
    await page.keyboard.press('Control+z');
    await until('no upright', async () => (await setUp()).plumb === null);
  });

  await report.check('hip crease and knee top are clicked, and the depth comes from the clicks', async () => {
    await letGo(app);
    await goToFrame(app, 206);
    await page.getByRole('radio', { name: 'Hip and knee' }).check({ force: true });
    for (const [x, y] of [
      [414, 355],
      [470, 343],
    ] as const) {
      const place = await pointOnScreen(app, x, y);
      await page.mouse.click(place.x, place.y);
    }
    await until('the clicks', async () => (await setUp()).depthClicks.length === 1);
    const rep = await until('the depth', async () => {
      const joints = (await measuresOf(app, clipId)).measurement?.reps[1]?.joints;
      return joints?.depthFrom === 'clicks' ? joints : null;
    });
    assert.ok(rep.depthM !== null && rep.depthM.value < 0, JSON.stringify(rep.depthM));
    await page.keyboard.press('Control+z');
    await until('no clicks', async () => (await setUp()).depthClicks.length === 0);
  });

  await report.check('a click beside the disc’s middle is followed again and snaps onto it', async () => {
    await letGo(app);
    await goToFrame(app, 60);
    await page.getByRole('radio', { name: 'Disc', exact: true }).check({ force: true });
    const beside = await pointOnScreen(app, 440.73 + 3, 204.33 - 2);
    await page.mouse.click(beside.x, beside.y);
    await until('the click', async () => (await setUp()).clicks.length === 1);
    const jobs = await app.ask('jobs.list', {});
    const job = jobs.findLast(({ kind }) => kind === 'measure');
    if (job !== undefined) await finishedJob(app, job.id);
    const { recording } = await app.ask('measures.recording', { clipId });
    const seen = recording?.disc?.frames[60];
    assert.ok(seen != null && Math.hypot(seen.xPx - 440.73, seen.yPx - 204.33) < 1, JSON.stringify(seen));
    await page.getByRole('button', { name: 'Remove: Disc: 1 click' }).waitFor();
    await page.getByRole('button', { name: 'Done', exact: true }).click();
  });
}

/** Takes the focus off whatever has it, so that keys are the screen's. */
const letGo = (app: App): Promise<void> =>
  app.page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
