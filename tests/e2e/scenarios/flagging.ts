import assert from 'node:assert/strict';
import type { Flag } from '../../../engine/review/review.ts';
import { addOneClip, footage } from '../harness/oneClip.ts';
import { clickCell, goToFrame, openReview, shown, shownAt } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { frameAt, readTruth } from '../harness/truth.ts';
import { until } from '../harness/until.ts';
import { checkShown } from './stepping/checkShown.ts';
import { checkPictures } from './stepping/pictures.ts';

/** Flags land on the frame on screen, whatever the picture is doing; what is typed for them never runs as keys. */
export const flagging: Scenario = {
  name: 'flagging',
  run: async (bench, report) => {
    const app = await bench.launch(bench.newFolder('flagging'));
    const { page } = app;
    const { sessionId, clipId } = await addOneClip(app, footage.squat);
    const { pts, reps } = await readTruth('squat-side');
    const edges = reps.slice(0, 3).map(({ phases_s }) => ({
      start: frameAt(pts, phases_s.eccentric[0]),
      stretchedEnd: frameAt(pts, phases_s.eccentric[1]),
      end: frameAt(pts, phases_s.concentric[1]),
    }));
    for (const rep of edges)
      for (const edge of ['start', 'stretchedEnd', 'end'] as const)
        await app.ask('reps.mark', { clipId, edge, frame: rep[edge] });
    await page.reload();
    await openReview(app, sessionId);
    const [first, second, third] = edges;
    assert.ok(first !== undefined && second !== undefined && third !== undefined);
    const flags = async () => (await app.ask('review.get', { sessionId })).review.entries[0]?.flags ?? [];
    /** The flag that comes next, with the frame that it landed on. */
    const nextFlag = async (press: () => Promise<void>): Promise<{ readonly flag: Flag; readonly frame: number }> => {
      const before = new Set((await flags()).map(({ id }) => id));
      await press();
      const flag = await until('a flag', async () => (await flags()).find(({ id }) => !before.has(id)) ?? null);
      assert.ok(flag.id !== undefined && 'frame' in flag.at);
      return { flag: { ...flag, id: flag.id }, frame: flag.at.frame };
    };
    const shownFrom = { app, playedS: pts, toleranceS: 0.001 };
    /** Drops a flag and checks that its frame, and the picture of it, is what stands on screen. */
    const landsOnScreen = async (key: string, press: () => Promise<void> = () => page.keyboard.press(key)) => {
      const landed = await nextFlag(press);
      await checkShown(shownFrom, landed.frame);
      await checkPictures(app, footage.squat, [landed.frame]);
      if (key !== 'k') await page.keyboard.press('Escape');
      return landed;
    };
    const frameBeyond = (frame: number, direction: 1 | -1) =>
      until(`frame ${frame} to go by`, async () => direction * ((await shown(app)).frame - frame) > 0);

    await report.check('while the clip plays, forwards and backwards', async () => {
      await goToFrame(app, second.start - 5);
      await clickCell(app, 'barPath', 'set');
      await page.keyboard.press('Space');
      await frameBeyond(second.start + 10, 1);
      await landsOnScreen('2');
      await page.keyboard.press('Shift+Space');
      await frameBeyond(second.start + 2, -1);
      await landsOnScreen('k');
    });

    await report.check('while a seek is under way, by steps or by a click on another rep', async () => {
      await goToFrame(app, first.start + 3);
      const { frame } = await landsOnScreen('3', async () => {
        for (let step = 0; step < 6; step += 1) await page.keyboard.press('Shift+ArrowRight');
        await page.keyboard.press('3');
      });
      assert.equal(frame, first.start + 9);
      const moved = await landsOnScreen('1', async () => {
        await clickCell(app, 'depth', 3);
        await page.keyboard.press('1');
      });
      assert.deepEqual([moved.frame, moved.flag.reps], [third.stretchedEnd, [3]]);
      assert.match((await page.getByTestId('done-state').textContent()) ?? '', /Prefer: Depth, rep 3, at 0:/);
    });

    await report.check('letters typed after a severity key and after N are text, and run no command', async () => {
      await clickCell(app, 'headPosition', 2);
      const typed = 'qyxu fkcrst';
      const { flag } = await nextFlag(async () => {
        await page.keyboard.press('2');
        await page.keyboard.type(typed);
      });
      const filter = page.getByRole('combobox', { name: 'Filter the faults' });
      await until('the letters in the filter', async () => (await filter.inputValue()) === typed);
      await page.keyboard.press('Escape');
      const count = (await flags()).length;
      await clickCell(app, 'spinePosition', 2);
      const note = await nextFlag(async () => {
        await page.keyboard.press('n');
        await page.keyboard.type(typed);
      });
      assert.deepEqual([note.flag.severity, note.flag.fault], [null, null]);
      await page.keyboard.press('Escape');
      await until('the note', async () => (await flags()).find(({ id }) => id === note.flag.id)?.note === typed);
      assert.equal((await flags()).length, count + 1);
      await page.keyboard.press('3');
      await until('the note to be a flag', async () =>
        (await flags()).some(({ id, severity }) => id === note.flag.id && severity === 'correct'),
      );
      await page.keyboard.press('Escape');
      assert.equal((await flags()).find(({ id }) => id === flag.id)?.fault, null);
      await bench.picture(app, 'flagging-note');
    });

    await report.check('an undo at once gives the keys back to the scorecard', async () => {
      await clickCell(app, 'gaze', 1);
      const count = (await flags()).length;
      await page.keyboard.press('2');
      await page.keyboard.press('Control+z');
      await until('the flag to be gone again', async () => (await flags()).length === count);
      await page.keyboard.press('Escape');
      await clickCell(app, 'gaze', 1);
      await page.keyboard.press('f');
      await until('the tick', async () =>
        (await app.ask('review.get', { sessionId })).review.entries[0]?.ticks.some(
          ({ criterion }) => criterion === 'gaze',
        ),
      );
    });

    await report.check(
      'a flag goes where it is put: here, to a typed time, along the strip, to another rep',
      async () => {
        await clickCell(app, 'depth', 3);
        const own = (await flags()).find(
          ({ criterion, reps: of }) => criterion === 'depth' && of !== 'set' && of[0] === 3,
        );
        const frameOf = async () => {
          const at = (await flags()).find(({ id }) => id === own?.id)?.at;
          return at !== undefined && 'frame' in at ? at.frame : -1;
        };
        await shownAt(app, await frameOf());
        await goToFrame(app, third.stretchedEnd + 4);
        await page.keyboard.press('Shift+G');
        await until('the flag here', async () => (await frameOf()) === third.stretchedEnd + 4);
        const field = page.getByRole('textbox', { name: 'Time of this flag' });
        await field.fill('99:00');
        await field.press('Enter');
        await page.getByRole('alert').getByText('is not a moment of this clip').waitFor();
        await field.fill(String(third.stretchedEnd - 6));
        await field.press('Enter');
        await until('the flag at the typed frame', async () => (await frameOf()) === third.stretchedEnd - 6);
        const mark = page.locator(`[data-flag-mark="${own?.id}"]`);
        const box = await mark.boundingBox();
        assert.ok(box !== null);
        await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
        await page.mouse.down();
        await page.mouse.move(box.x + box.width / 2 - 40, box.y + box.height / 2, { steps: 4 });
        const dragged = Number(await mark.getAttribute('data-dragged'));
        await page.mouse.up();
        await until('the flag where it was let go', async () => (await frameOf()) === dragged);
        await checkShown(shownFrom, dragged);
        await clickCell(app, 'depth', 3);
        await page.keyboard.press('Control+Shift+V');
        await bench.picture(app, 'flagging-copy');
        await page.getByRole('checkbox', { name: 'Rep 1' }).check();
        const copy = await nextFlag(() => page.getByRole('button', { name: /Copy to 1 place/ }).click());
        assert.deepEqual(copy.flag.reps, [1]);
        assert.ok(copy.frame >= first.start && copy.frame <= first.end, `${copy.frame}`);
      },
    );
    await app.close();
  },
};
