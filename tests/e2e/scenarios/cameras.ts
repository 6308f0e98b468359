import assert from 'node:assert/strict';
import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import type { Locator } from 'playwright-core';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import { type CountedClip, makeCountedClip } from '../harness/countedClip.ts';
import { finishedJob } from '../harness/jobs.ts';
import { addOneClip } from '../harness/oneClip.ts';
import { cellWords, clickCell, goToFrame, openReview, picture, shownAt } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

const counted = { leaveOut: 0, turned: 'no' } as const;
/** One set, at thirty and at twenty-five frames a second; the second camera was started two fifths of a second later. */
const side: CountedClip = { ...counted, name: 'side', rate: '30', frames: 100 };
const front: CountedClip = { ...counted, name: 'front', rate: '25', frames: 75 };

/** Two cameras of one set: laid together by a moment, stepped, swapped, judged as one, and taken apart by undo. */
export const cameras: Scenario = {
  name: 'cameras',
  run: async (bench, report) => {
    const folder = bench.newFolder('cameras');
    const made = `${folder}-clips`;
    await mkdir(made, { recursive: true });
    const fileOf = ({ name }: CountedClip): string => path.join(made, `${name}.mp4`);
    await Promise.all([side, front].map((clip) => makeCountedClip(clip, fileOf(clip))));
    const app = await bench.launch(folder);
    const { page } = app;
    const { sessionId, clipId } = await addOneClip(app, fileOf(side));
    const entry = async () => (await app.ask('review.get', { sessionId })).review.entries[0];
    const { jobIds } = await app.ask('clips.import', {
      ...{ sessionId, entryId: (await entry())?.id ?? '', view: 'front', paths: [fileOf(front)] },
    });
    for (const jobId of jobIds) await finishedJob(app, jobId);
    const otherId = (await entry())?.clips.find(({ id }) => id !== clipId)?.id ?? '';
    for (const start of [20, 60]) {
      await app.ask('reps.mark', { clipId, edge: 'start', frame: start });
      await app.ask('reps.mark', { clipId, edge: 'end', frame: start + 30 });
    }
    await page.reload();
    await openReview(app, sessionId);
    const other = page.getByTestId('other-camera');
    const small = page.locator('.other-camera').getByTestId('framed-window');
    const large = page.getByTestId('stage-picture').getByTestId('framed-window');
    /** The frames on the stage and in the corner, by the bars that a screen's pixels show. */
    const bothShow = async (own: number, there: number): Promise<void> => {
      await shownAt(app, own);
      await until(`${there} in the corner`, async () => (await other.getAttribute('data-frame')) === String(there));
      await until('the bars of both', async () => {
        return (await barsOf(app, large)) === own && (await barsOf(app, small)) === there;
      });
    };
    const ask = async (line: string): Promise<void> => {
      await page.locator('.picture-menu > button').click();
      await page.getByRole('menuitem', { name: line }).click();
    };

    await report.check('silent clips without turns in common are refused in one sentence', async () => {
      await ask('Two cameras: pair with the neighbouring clip');
      await page.getByRole('alert').waitFor();
    });

    await report.check('the same moment pointed out in both makes them one set', async () => {
      await goToFrame(app, 30);
      await ask('Two cameras: mark the same moment');
      await page.getByText('This moment of “side.mp4” is marked').waitFor();
      await page.keyboard.press('Shift+PageDown');
      await picture(app);
      await goToFrame(app, 15);
      await ask('Two cameras: mark the same moment');
      await bothShow(15, 30);
    });

    await report.check('a key swaps them at the same moment, and both step together', async () => {
      await page.keyboard.press('Shift+O');
      await picture(app);
      await bothShow(30, 15);
      // A fifth of a second is six frames of the one and five of the other.
      for (let step = 0; step < 6; step += 1) await page.keyboard.press('Shift+ArrowRight');
      await bothShow(36, 20);
      await goToFrame(app, 24);
      await bothShow(24, 10);
    });
    await bench.picture(app, '21-cameras');
    await checkScreen(app, report, await checkerSource(), 'two cameras');

    await report.check('a flag on each stands in one scorecard', async () => {
      await goToFrame(app, 36);
      await clickCell(app, 'depth', 1);
      await page.keyboard.press('2');
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: /^Other camera/ }).click();
      await picture(app);
      await bothShow(20, 36);
      await clickCell(app, 'barPath', 1);
      await page.keyboard.press('3');
      await page.keyboard.press('Escape');
      await until('both flags', async () => ((await entry())?.flags.length ?? 0) === 2);
      assert.deepEqual(
        (await entry())?.flags.map(({ clip, reps, at }) => [clip, reps, 'frame' in at && at.frame]),
        [
          [clipId, [1], 36],
          [otherId, [1], 20],
        ],
      );
      assert.match(await cellWords(app, 'depth', 1), /djust/);
      assert.match(await cellWords(app, 'barPath', 1), /orrect/);
    });

    await report.check('the other camera shows as it is framed: turned, mirrored, cut', async () => {
      await app.ask('clips.frame', { clipId, change: { turnDeg: 90, mirrored: true, brightness: 0.5 } });
      const shape = () =>
        small.evaluate((element) => {
          const { width, height } = element.getBoundingClientRect();
          return width / height;
        });
      await until('a picture on its side', async () => Math.abs((await shape()) - 240 / 384) < 0.02);
      await bench.picture(app, '21-cameras-framed');
      await app.ask('clips.frame', {
        ...{ clipId, change: { turnDeg: 180, crop: { leftPx: 0, topPx: 0, widthPx: 320, heightPx: 240 } } },
      });
      // Upside down and in a mirror the bars stand in their order, without the two at the edge that is cut off.
      await until('ten bars', async () => (await barsOf(app, small, 10)) === 36 >> 2);
    });

    await report.check('undo takes the flags back and the cameras apart', async () => {
      await page.keyboard.press('Escape');
      for (let undone = 0; undone < 5; undone += 1) await app.ask('history.undo', { sessionId });
      await until('no flag and two sets', async () => {
        const now = await entry();
        return now?.flags.length === 0 && now.clips.every(({ sameSet }) => sameSet === undefined);
      });
      await other.waitFor({ state: 'detached' });
    });
    await app.close();
  },
};

/** The number that bars carry as a part of the page shows them: white for one, black for nought, the lowest first. */
async function barsOf(app: App, part: Locator, bits = 12): Promise<number> {
  const png = (await part.screenshot({ animations: 'disabled' })).toString('base64');
  return app.page.evaluate(
    async ({ png, bits }) => {
      const bitmap = await createImageBitmap(
        new Blob([Uint8Array.from(atob(png), (byte) => byte.charCodeAt(0))], { type: 'image/png' }),
      );
      const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
      if (context === null) return Number.NaN;
      context.drawImage(bitmap, 0, 0);
      let number = 0;
      for (let bit = 0; bit < bits; bit += 1) {
        const x = Math.floor(((bit + 0.5) * bitmap.width) / bits);
        const [, green = 0] = context.getImageData(x, Math.floor(bitmap.height / 2), 1, 1).data;
        if (green > 64) number += 2 ** bit;
      }
      return number;
    },
    { png, bits },
  );
}
