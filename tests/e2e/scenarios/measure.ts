import assert from 'node:assert/strict';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import { longestMs } from '../harness/jobs.ts';
import { addOneClip, footage } from '../harness/oneClip.ts';
import { pointOnScreen } from '../harness/pointOnScreen.ts';
import { cellWords, goToFrame, openReview, shown } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';
import { checkSetUp } from './measure/checkSetUp.ts';
import { checkSuggestions } from './measure/checkSuggestions.ts';
import { measuresOf } from './measure/measuresOf.ts';

/** Middle of the disc in pixels of the picture, as the clip's renderer drew it: frame, x, y. */
const discMiddles = [
  [24, 440.9, 111.55],
  [60, 440.73, 204.33],
  [206, 452.49, 274.91],
] as const;

/** When the bar of each rep is fastest on its way up, in seconds: the clip's truth file. */
const fastestAtS = [3.3, 8.45] as const;

/** Measuring a clip, what it shows over the picture and beside it, and what it proposes. */
export const measure: Scenario = {
  name: 'measure',
  run: async (bench, report) => {
    const source = await checkerSource();
    const folder = bench.newFolder('measure');
    const app = await bench.launch(folder);
    const { page } = app;
    const { sessionId, clipId } = await addOneClip(app, footage.squat);
    await planTheSet(app, sessionId);
    await page.reload();
    await openReview(app, sessionId);

    await report.check('before: the panel says what measuring gives, and a key begins it', async () => {
      await page.keyboard.press('t');
      await page.getByRole('button', { name: 'Measure all clips' }).waitFor();
      await bench.picture(app, '16-not-measured');
      await checkScreen(app, report, source, 'not measured');
      await page.keyboard.press('m');
      await page.getByRole('region', { name: 'Measures' }).getByTestId('job').waitFor();
      await bench.picture(app, '16-measuring');
    });
    await report.check('the job ends, and the three reps of the clip are in the table and on the card', async () => {
      await until('the measures', async () => (await measuresOf(app, clipId)).measurement, longestMs);
      await page.getByRole('grid', { name: 'Measures of each rep' }).waitFor();
      assert.deepEqual(
        (await page.locator('.measure-table thead th').allTextContents()).map((head) => head.slice(0, 1)),
        ['R', '1', '2', '3'],
      );
      const { review } = await app.ask('review.get', { sessionId });
      assert.equal(review.entries[0]?.clips[0]?.reps.length, 3);
    });

    await report.check('the cursor waits in rep 1, and the picture shows it', async () => {
      await page.keyboard.press('t');
      await page.locator('[data-cursor="true"][data-rep="1"]').waitFor();
      await page
        .getByTestId('rep-time')
        .getByText(/^rep 1/)
        .waitFor();
      await page.keyboard.press('t');
    });

    await report.check('the disc’s outline lies on the disc, in the picture and on screen', async () => {
      for (const [frame, x, y] of discMiddles) {
        await goToFrame(app, frame);
        const outline = page.getByTestId('disc-outline');
        const [, atX = 0, atY = 0] =
          /translate\((\S+) (\S+)\)/.exec((await outline.getAttribute('transform')) ?? '') ?? [];
        assert.ok(Math.hypot(Number(atX) - x, Number(atY) - y) < 3, `frame ${frame}: ${atX}, ${atY}`);
        const box = await outline.locator('ellipse').last().boundingBox();
        const wanted = await pointOnScreen(app, x, y);
        assert.ok(box !== null);
        const away = Math.hypot(box.x + box.width / 2 - wanted.x, box.y + box.height / 2 - wanted.y);
        assert.ok(away < 3, `frame ${frame}: ${away} px away on screen`);
      }
    });
    await report.check('each layer is switched by its key, and stays so after a reload', async () => {
      for (const [key, layer] of [
        ['p', 'path-layer'],
        ['o', 'disc-outline'],
        ['j', 'joints-layer'],
        ['v', 'curves-lane'],
      ] as const) {
        await page.getByTestId(layer).waitFor({ state: 'attached' });
        await page.keyboard.press(key);
        await page.getByTestId(layer).waitFor({ state: 'detached' });
      }
      await page.reload();
      await openReview(app, sessionId);
      await page.keyboard.press('Shift+P');
      await page
        .locator('[role="menuitemcheckbox"][aria-checked="false"]:not([aria-disabled])', { hasText: 'curves' })
        .waitFor();
      await page.keyboard.press('Escape');
      assert.equal(await page.getByTestId('curves-lane').count(), 0);
      for (const key of ['p', 'o', 'j', 'v']) await page.keyboard.press(key);
      await page.getByTestId('curves-lane').waitFor();
    });
    await report.check('the curves name the phase under the pointer, and a click goes there', async () => {
      const lane = page.getByTestId('curves-lane');
      const box = await lane.boundingBox();
      assert.ok(box !== null);
      // 1.5 s of 14.1 s: the middle of the first eccentric, which lasts from 0.8 s to 2.4 s.
      const x = box.width * (1.5 / 14.1);
      await lane.hover({ position: { x, y: 20 } });
      await page.getByText(/rep 1, eccentric/).waitFor();
      await lane.click({ position: { x, y: 20 } });
      await until('about frame 45', async () => Math.abs((await shown(app)).frame - 45) <= 1);
    });

    await report.check('a cell of the table goes to its moment, by mouse and by keys', async () => {
      await page.keyboard.press('t');
      await page.locator('td[data-measure="peakSpeed"][data-column="0"]').click();
      await until('the fastest moment of rep 1', async () => near(app, fastestAtS[0]));
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Enter');
      await until('the fastest moment of rep 2', async () => near(app, fastestAtS[1]));
      await page.locator('thead th[data-current="true"]').getByText('2').waitFor();
    });
    await bench.picture(app, '16-table');

    await checkSuggestions({ app, report, sessionId, clipId, picture: (name) => bench.picture(app, name) });

    await report.check('an edge moved by hand wins over the measure, and is told apart', async () => {
      const edge = page.getByRole('slider', { name: 'End of rep 2', exact: true });
      const before = Number(await edge.getAttribute('aria-valuenow'));
      await edge.focus();
      for (let step = 0; step < 4; step += 1) await page.keyboard.press('ArrowLeft');
      const rep = await until('the measure to follow', async () => {
        const found = (await measuresOf(app, clipId)).measurement?.reps[1];
        return found?.manualEdges.includes('end') === true ? found : null;
      });
      assert.ok(Math.abs(rep.endS - (before - 4) / 30) < 0.02, `the rep ends at ${rep.endS} s`);
      await page.locator('.measure-table thead th').nth(2).getByText('by hand').waitFor();
      assert.match((await edge.getAttribute('aria-valuetext')) ?? '', /by hand/);
      await page.keyboard.press('Shift+T');
      await until('the same edge', async () => Number(await edge.getAttribute('aria-valuenow')) === before - 4);
    });

    await checkSetUp({ app, report, source, clipId, picture: (name) => bench.picture(app, name) });

    for (const theme of ['light', 'dark'] as const) {
      await page.evaluate((chosen) => localStorage.setItem('rackside.theme', chosen), theme);
      await page.reload();
      await openReview(app, sessionId);
      await goToFrame(app, 206);
      await page.keyboard.press('t');
      await page.getByRole('grid', { name: 'Measures of each rep' }).waitFor();
      await checkScreen(app, report, source, `measures, ${theme}`);
      for (const width of [1280, 2560] as const) {
        await page.setViewportSize({ width, height: width === 1280 ? 720 : 1440 });
        await bench.picture(app, `16-measures-${theme}-${width}`);
        await page.locator('.plots').scrollIntoViewIfNeeded();
        await bench.picture(app, `16-plots-${theme}-${width}`);
      }
      await page.setViewportSize({ width: 1280, height: 720 });
      await report.check(`measures, ${theme}: the page never scrolls sideways`, () => checkNoSideways(app));
    }
    await page.keyboard.press('t');
    const depth = await cellWords(app, 'depth', 1);
    await app.close();

    const again = await bench.launch(folder);
    await report.check('measures and answers are there after a restart', async () => {
      await openReview(again, sessionId);
      assert.equal(await cellWords(again, 'depth', 1), depth);
      const kept = await measuresOf(again, clipId);
      assert.equal(kept.measurement?.reps.length, 3);
      assert.equal(kept.dismissed.length, 1);
      await again.page.keyboard.press('t');
      await again.page.getByText('Dismissed (1)').click();
      await again.page.getByRole('button', { name: /^Bring back/ }).click();
      await until('it is back', async () => (await measuresOf(again, clipId)).dismissed.length === 0);
    });
    await again.close();
  },
};

/** The exercise, and a tempo that the second rep of the clip alone comes near. */
async function planTheSet(app: App, sessionId: string): Promise<void> {
  const { review } = await app.ask('review.get', { sessionId });
  await app.ask('entries.update', {
    entryId: review.entries[0]?.id ?? '',
    exercise: 'back-squat',
    plan: { sets: 1, reps: 3, tempo: '2-1-X-1' },
  });
}

const near = async (app: App, seconds: number): Promise<boolean> =>
  Math.abs((await shown(app)).frame / 30 - seconds) < 0.15;

async function checkNoSideways(app: App): Promise<void> {
  const wide = await app.page.evaluate(() =>
    Math.max(
      ...[document.documentElement, ...document.querySelectorAll('main, main > *')].map(
        (part) => part.scrollWidth - part.clientWidth,
      ),
    ),
  );
  assert.ok(wide <= 0, `the page is ${wide} px wider than the window`);
}
