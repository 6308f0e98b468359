import assert from 'node:assert/strict';
import { type Box, boxAt } from '../../../engine/covers/cover.ts';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import { drag } from '../harness/drag.ts';
import { finishedJob } from '../harness/jobs.ts';
import { addOneClip, footage } from '../harness/oneClip.ts';
import { pointOnScreen } from '../harness/pointOnScreen.ts';
import { goToFrame, openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

/** Covering a face or a place: with the pointer, with the keys alone, by the joints. */
export const covers: Scenario = {
  name: 'covers',
  run: async (bench, report) => {
    const source = await checkerSource();
    const app = await bench.launch(bench.newFolder('covers'));
    const { page } = app;
    const { sessionId, clipId } = await addOneClip(app, footage.squat);
    await page.reload();
    await openReview(app, sessionId);
    const kept = async () => (await app.ask('review.get', { sessionId })).covers;
    const placesOf = async (which: number) => {
      const cover = (await kept())[which]?.cover;
      return cover?.kind === 'box' ? cover.places : [];
    };
    const mark = (which: number) => page.locator('[data-cover]').nth(which);
    const panel = page.getByRole('region', { name: 'Covers', exact: true });

    await report.check('a key begins; without joints the head waits for measuring, and a box is dragged', async () => {
      await goToFrame(app, 40);
      await page.keyboard.press('Shift+B');
      await panel.waitFor();
      await panel.getByText(/measure this clip first/).waitFor();
      assert.equal(await panel.getByRole('button', { name: /lifter’s head/ }).count(), 0);
      await bench.picture(app, '17-cover-begins');
      await drag(app, [380, 40], [440, 110]);
      const [cover] = await until('a cover', async () => ((await kept()).length === 1 ? kept() : null));
      assert.ok(cover?.cover.kind === 'box');
      assert.equal(cover.cover.firstFrame, 0);
      assert.equal(cover.cover.look, 'filled');
      const [place] = cover.cover.places;
      assert.equal(place?.frame, 40);
      near(place?.box, { leftPx: 380, topPx: 40, widthPx: 60, heightPx: 70 });
      await page.locator('[data-cover]:focus').waitFor();
      await bench.picture(app, '17-cover-drawn');
    });

    await report.check(
      'stepping on and moving it by keys puts a place there; between them it moves evenly',
      async () => {
        for (let step = 0; step < 2; step += 1) await page.keyboard.press('PageDown');
        await until('frame 60', async () => (await page.getByTestId('frame-number').textContent()) === '60');
        await page.keyboard.press('Shift+ArrowRight');
        await page.keyboard.press('Shift+ArrowLeft');
        await settled(app, 60);
        const [before] = await placesOf(0);
        for (let step = 0; step < 6; step += 1) await page.keyboard.press('ArrowDown');
        await page.keyboard.press('Alt+ArrowRight');
        const [, second] = await until('its last place', async () => {
          const places = await placesOf(0);
          return places[1]?.box.widthPx === (before?.box.widthPx ?? 0) + 5 ? places : null;
        });
        assert.equal(second?.frame, 60);
        assert.equal(second.box.topPx, (before?.box.topPx ?? 0) + 30);
        await until('the mark there', async () => liesAt(app, mark(0), second.box));
        await bench.picture(app, '17-cover-moved');
        await goToFrame(app, 50);
        const [cover] = await kept();
        const half = cover?.cover.kind === 'box' ? boxAt(cover.cover, 50) : null;
        assert.equal(half?.topPx, (before?.box.topPx ?? 0) + 15);
        await until('the mark half-way', async () => half !== null && liesAt(app, mark(0), half));
        await panel.getByText(/not placed at this frame/).waitFor();
        await panel.getByText('2 positions, whole clip').waitFor();
      },
    );

    await report.check('undo takes place after place back, and then the cover; redo brings them again', async () => {
      const before = await kept();
      const list = await app.ask('history.list', { sessionId });
      const acts = list.filter(({ name }) => name.id.startsWith('cover'));
      assert.ok(acts.length > 1, JSON.stringify(list));
      const undone = async (): Promise<number> =>
        (await app.ask('history.list', { sessionId })).filter(({ undone: isUndone }) => isUndone).length;
      for (let step = 1; step <= acts.length; step += 1) {
        await page.keyboard.press('Control+z');
        await until(`${step} undone`, async () => (await undone()) === step);
      }
      assert.deepEqual(await kept(), []);
      await until('an empty picture', async () => (await page.locator('[data-cover]').count()) === 0);
      await bench.picture(app, '17-cover-undone');
      for (let step = acts.length - 1; step >= 0; step -= 1) {
        await page.keyboard.press('Control+Shift+z');
        await until(`${step} undone`, async () => (await undone()) === step);
      }
      assert.deepEqual(await kept(), before);
      await until('the cover again', async () => (await mark(0).count()) === 1);
    });
    await checkScreen(app, report, source, 'covers');

    await report.check(
      'keys alone: a cover in the middle, its look, from here and until here, and away again',
      async () => {
        await page.keyboard.press('Escape');
        await panel.waitFor({ state: 'detached' });
        await goToFrame(app, 30);
        await page.keyboard.press('Shift+B');
        await page.getByRole('button', { name: 'Add a cover in the middle of the picture' }).waitFor();
        await page.locator('button:focus', { hasText: 'Add a cover' }).waitFor();
        await page.keyboard.press('Enter');
        await until('a second cover', async () => (await kept()).length === 2);
        await page.locator('[data-cover][aria-pressed="true"]:focus').waitFor();
        // The picture is 854 by 480: a box of 80 in its middle.
        near((await placesOf(1))[0]?.box, { leftPx: 387, topPx: 200, widthPx: 80, heightPx: 80 });
        await page.getByRole('radio', { name: 'Mosaic' }).focus();
        await page.keyboard.press('Space');
        await until('a mosaic', async () => (await kept())[1]?.cover.look === 'mosaic');
        await page.getByRole('button', { name: 'From here' }).focus();
        await page.keyboard.press('Enter');
        await until('its beginning', async () => (await kept())[1]?.cover.firstFrame === 30);
        await page.keyboard.press('PageDown');
        await settled(app, 40);
        await page.getByRole('button', { name: 'Until here' }).focus();
        await page.keyboard.press('Enter');
        await until('its end', async () => (await kept())[1]?.cover.lastFrame === 40);
        await bench.picture(app, '17-cover-mosaic');
        await page.keyboard.press('PageDown');
        await settled(app, 50);
        await until('one cover on screen', async () => (await page.locator('[data-cover]').count()) === 1);
        await page
          .getByTestId('cover-row')
          .nth(1)
          .getByRole('button', { name: /^Cover 2: mosaic/ })
          .focus();
        await page.keyboard.press('Enter');
        await settled(app, 30);
        await page.locator('[data-cover][aria-pressed="true"]:focus').waitFor();
        await page.keyboard.press('Delete');
        await until('one cover', async () => (await kept()).length === 1);
      },
    );

    await report.check(
      'outside of the mode it shows fainter and has a name; the picture pans and draws as before',
      async () => {
        await page.keyboard.press('Escape');
        await panel.waitFor({ state: 'detached' });
        const shown = page.getByRole('img', { name: 'Cover 1: dark box' });
        await shown.waitFor();
        const strength = await shown.evaluate((element) => Number(getComputedStyle(element).opacity));
        assert.ok(strength > 0.2 && strength < 0.7, `${strength}`);
        await bench.picture(app, '17-cover-outside');
        const before = await kept();
        await drag(app, [500, 200], [600, 300]);
        assert.deepEqual(await kept(), before);
      },
    );

    await report.check('once the joints are known, the lifter’s head is covered by them', async () => {
      const { jobIds } = await app.ask('measures.start', { clipIds: [clipId] });
      for (const jobId of jobIds) await finishedJob(app, jobId);
      await page.keyboard.press('Shift+B');
      await page.getByRole('button', { name: 'Cover the lifter’s head (follows the joints)' }).click();
      await until('a head', async () => (await kept()).some(({ cover }) => cover.kind === 'head'));
      await page.getByRole('img', { name: /^Cover 2: head/ }).waitFor();
      assert.ok(await page.getByRole('button', { name: 'Cover the lifter’s head (follows the joints)' }).isDisabled());
      await bench.picture(app, '17-cover-head');
      for (let step = 0; step < 2; step += 1) await page.keyboard.press('Shift+D');
      await page.locator('html[data-theme="dark"]').waitFor();
      await bench.picture(app, '17-cover-dark');
    });
    await app.close();
  },
};

function near(box: Box | undefined, wanted: Box): void {
  for (const key of ['leftPx', 'topPx', 'widthPx', 'heightPx'] as const) {
    assert.ok(box !== undefined && Math.abs(box[key] - wanted[key]) <= 2, JSON.stringify([box, wanted]));
  }
}

/** Whether a mark lies on screen where a box of the picture does. */
async function liesAt(app: App, mark: ReturnType<App['page']['locator']>, box: Box): Promise<boolean> {
  const onScreen = await mark.locator('.cover-body').boundingBox();
  const from = await pointOnScreen(app, box.leftPx, box.topPx);
  const to = await pointOnScreen(app, box.leftPx + box.widthPx, box.topPx + box.heightPx);
  if (onScreen === null) return false;
  const { x, y, width, height } = onScreen;
  return [x - from.x, y - from.y, x + width - to.x, y + height - to.y].every((away) => Math.abs(away) < 2);
}

const settled = (app: App, frame: number) =>
  until(`frame ${frame}`, async () => {
    const number = app.page.getByTestId('frame-number');
    const isThere = (await number.textContent()) === String(frame);
    return isThere && (await number.getAttribute('data-settled')) === 'true';
  });
