import assert from 'node:assert/strict';
import type { App } from '../harness/app.ts';
import { goToFrame, openReview, shown, shownAt } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** The picture itself: zoom, shuttle both ways, a marked range, the rep before as a ghost. */
export const stage: Scenario = {
  name: 'stage',
  run: async (bench, report) => {
    const app = await bench.launch(await bench.demoFolder('stage'));
    const { page } = app;
    const { sessions } = await app.ask('desk.sessions', {});
    const sessionId = sessions[0]?.id ?? '';
    await openReview(app, sessionId);
    const { review } = await app.ask('review.get', { sessionId });
    const reps = review.entries[0]?.clips[0]?.reps ?? [];
    const frameOf = (moment: (typeof reps)[number]['start'] | undefined): number =>
      moment !== undefined && 'frame' in moment ? moment.frame : Number.NaN;

    await report.check('the wheel zooms at the pointer: what is under it stays', async () => {
      const box = await page.getByTestId('stage').boundingBox();
      assert.ok(box !== null);
      const [x, y] = [box.width * 0.7, box.height * 0.3];
      const under = (zoom: Zoom) => [(x - zoom.x) / zoom.scale, (y - zoom.y) / zoom.scale];
      const before = under(await zoomOf(app));
      await page.mouse.move(box.x + x, box.y + y);
      await page.mouse.wheel(0, -600);
      const zoom = await until('a closer picture', async () => {
        const now = await zoomOf(app);
        return now.scale > 3.9 ? now : null;
      });
      for (const [place, value] of under(zoom).entries()) assert.ok(Math.abs(value - (before[place] ?? 0)) < 1);
      await bench.picture(app, '10-zoomed');
      await page.mouse.down();
      await page.mouse.move(box.x + x - 80, box.y + y + 40, { steps: 4 });
      await page.mouse.up();
      const panned = await zoomOf(app);
      assert.deepEqual([Math.round(panned.x - zoom.x), Math.round(panned.y - zoom.y)], [-80, 40]);
    });

    await report.check('keys zoom, pan and show the whole picture again', async () => {
      await page.keyboard.press('0');
      assert.equal((await zoomOf(app)).scale, 1);
      await page.keyboard.press('+');
      await page.keyboard.press('+');
      assert.ok(Math.abs((await zoomOf(app)).scale - 2) < 0.01);
      const { x } = await zoomOf(app);
      await page.keyboard.press('Control+ArrowRight');
      assert.equal(Math.round((await zoomOf(app)).x - x), -60);
      await page.keyboard.press('0');
    });

    await report.check('backwards: every frame in falling order, and settled where it was stopped', async () => {
      await goToFrame(app, 60);
      const seen = watchFrames(app);
      await page.keyboard.press('Shift+Space');
      await until('the picture to run back', async () => (await shown(app)).frame <= 30);
      await page.keyboard.press('Space');
      await until('a settled picture', async () => (await shown(app)).settled);
      const frames = await (await seen)();
      // How many of them a busy machine gets to show is its own affair.
      assert.ok(frames.length > 5, `seen: ${frames}`);
      for (const [place, frame] of frames.entries()) assert.ok(place === 0 || frame <= (frames[place - 1] ?? 0));
      const at = (await shown(app)).frame;
      await page.keyboard.press('Shift+ArrowRight');
      await shownAt(app, at + 1);
    });

    await report.check('a marked range is repeated: playing never leaves it', async () => {
      await goToFrame(app, 30);
      await page.keyboard.press('a');
      await goToFrame(app, 38);
      await page.keyboard.press('b');
      const seen = watchFrames(app);
      await page.keyboard.press('Space');
      const frames = await until('two rounds', async () => {
        const now = await (await seen)('keep');
        return now.filter((frame, place) => frame < (now[place - 1] ?? 0)).length >= 2 ? now : null;
      });
      await page.keyboard.press('Space');
      await until('a settled picture', async () => (await shown(app)).settled);
      // The frame that shows while the jump back is under way may be the one after the last.
      for (const frame of frames) assert.ok(frame >= 30 && frame <= 39, `frame ${frame}`);
      await bench.picture(app, '10-range');
      await page.keyboard.press('Shift+R');
    });

    await report.check('the rep before shows at the same phase while its key is held', async () => {
      const [first, second] = reps;
      await goToFrame(app, frameOf(second?.stretchedEnd));
      await page.keyboard.down('h');
      const ghost = page.getByTestId('ghost');
      await until('the ghost', async () => (await ghost.getAttribute('data-frame')) !== null);
      assert.equal(Number(await ghost.getAttribute('data-frame')), frameOf(first?.stretchedEnd));
      await bench.picture(app, '10-ghost');
      await page.keyboard.up('h');
      await ghost.waitFor({ state: 'detached' });
    });
    await app.close();
  },
};

type Zoom = { readonly scale: number; readonly x: number; readonly y: number };

async function zoomOf(app: App): Promise<Zoom> {
  return app.page.getByTestId('stage-picture').evaluate((element) => {
    const matrix = new DOMMatrix(getComputedStyle(element).transform);
    return { scale: matrix.a, x: matrix.e, y: matrix.f };
  });
}

/** Collects the frames that are shown from now on; the result gives them, and goes on collecting only on "keep". */
async function watchFrames(app: App): Promise<(after?: 'keep') => Promise<readonly number[]>> {
  await app.page.evaluate(() => {
    const number = document.querySelector('[data-testid="frame-number"]');
    const frames: number[] = [];
    const observer = new MutationObserver(() => frames.push(Number(number?.textContent)));
    if (number !== null) observer.observe(number, { childList: true, characterData: true, subtree: true });
    Object.assign(window, { watchedFrames: frames, frameObserver: observer });
  });
  return (after) =>
    app.page.evaluate((keep) => {
      if (!keep) (Reflect.get(window, 'frameObserver') as MutationObserver).disconnect();
      return [...(Reflect.get(window, 'watchedFrames') as number[])];
    }, after === 'keep');
}
