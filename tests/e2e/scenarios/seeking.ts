import assert from 'node:assert/strict';
import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import type { App } from '../harness/app.ts';
import type { Bench } from '../harness/bench.ts';
import { barsOf, type CountedClip, makeCountedClip, numberOf } from '../harness/countedClip.ts';
import { addOneClip } from '../harness/oneClip.ts';
import type { Report } from '../harness/report.ts';
import { openReview, shown } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';

const hardest: readonly CountedClip[] = [
  { name: '29.97', rate: '30000/1001', frames: 330, leaveOut: 0, turned: 'no' },
  { name: 'a variable rate', rate: '30', frames: 330, leaveOut: 4, turned: 'no' },
  { name: '30, turned', rate: '30', frames: 330, leaveOut: 0, turned: 'quarter' },
];
const easier: readonly CountedClip[] = [
  { name: '30', rate: '30', frames: 330, leaveOut: 0, turned: 'no' },
  { name: '60', rate: '60', frames: 420, leaveOut: 0, turned: 'no' },
];

/** The asked frame and no other, told from the picture itself: thirty seeks and as many steps each way, over a keyframe. */
export const seeking: Scenario = {
  name: 'seeking',
  run: async (bench, report) => {
    for (const clip of hardest) await seekThrough(bench, report, clip, 30);
  },
};

/** The same of more clips, with two hundred of each. */
export const seekingLong: Scenario = {
  name: 'seekingLong',
  run: async (bench, report) => {
    for (const clip of [...hardest, ...easier]) await seekThrough(bench, report, clip, 200);
  },
};

async function seekThrough(bench: Bench, report: Report, clip: CountedClip, moves: number): Promise<void> {
  const folder = bench.newFolder(`seeking-${clip.name.replaceAll(/\W/g, '-')}`);
  const made = `${folder}-clips`;
  await mkdir(made, { recursive: true });
  const file = path.join(made, 'counted.mp4');
  await makeCountedClip(clip, file);
  const app = await bench.launch(folder);
  const { sessionId, clipId } = await addOneClip(app, file);
  const { table } = await app.ask('clips.frameTable', { clipId });
  assert.equal(table.ticks.length, clip.frames);
  await app.page.reload();
  await openReview(app, sessionId);
  const startTicks = table.ticks[0] ?? 0;
  const frameAtShare = (share: number): number =>
    table.ticks.findLastIndex((ticks) => ticks <= startTicks + share * (table.endTicks - startTicks));

  await report.check(`${clip.name}: ${moves} seeks to places in no order, 0 wrong`, async () => {
    const box = await app.page.getByRole('slider', { name: 'Position in the clip' }).boundingBox();
    assert.ok(box !== null);
    const wrong: string[] = [];
    let place = 17;
    for (let seek = 0; seek < moves; seek += 1) {
      // A walk that comes by every place once: 97 and the number of places have no common divisor.
      place = (place + 97) % Math.floor(box.width);
      const x = Math.ceil(box.x) + place;
      const frame = frameAtShare((x - box.x) / box.width);
      await app.page.mouse.click(x, box.y + 8);
      const read = await settledNumber(app, clip, frame);
      if (read !== numberOf(frame, clip)) wrong.push(`frame ${frame}: ${read} for ${numberOf(frame, clip)}`);
    }
    assert.deepEqual(wrong, []);
  });

  for (const [name, key, by] of [
    ['on', 'Shift+ArrowRight', 1],
    ['back', 'Shift+ArrowLeft', -1],
  ] as const) {
    await report.check(`${clip.name}: ${moves} steps ${name}, 0 wrong`, async () => {
      const track = app.page.getByRole('slider', { name: 'Position in the clip' });
      await track.focus();
      await app.page.keyboard.press(by > 0 ? 'Home' : 'End');
      let frame = by > 0 ? 0 : clip.frames - 1;
      await settledNumber(app, clip, frame);
      const wrong: string[] = [];
      for (let step = 0; step < moves; step += 1) {
        frame += by;
        await app.page.keyboard.press(key);
        const read = await settledNumber(app, clip, frame);
        if (read !== numberOf(frame, clip)) wrong.push(`frame ${frame}: ${read} for ${numberOf(frame, clip)}`);
      }
      assert.deepEqual(wrong, []);
    });
  }
  await app.close();
}

/** Waits for a frame to stand on screen, then reads the number in its picture. */
async function settledNumber(app: App, clip: CountedClip, frame: number): Promise<number> {
  await until(`frame ${frame}`, async () => {
    const now = await shown(app);
    return now.settled && now.frame === frame;
  });
  return app.page.evaluate(({ bits, barPx, turned, drawnOver }) => {
    const over = document.querySelector<HTMLCanvasElement>(drawnOver);
    const video = document.querySelector('video');
    const picture = over ?? video;
    if (picture === null || video === null) return Number.NaN;
    const canvas = new OffscreenCanvas(video.videoWidth, video.videoHeight);
    const context = canvas.getContext('2d');
    if (context === null) return Number.NaN;
    context.drawImage(picture, 0, 0, canvas.width, canvas.height);
    let number = 0;
    for (let bit = 0; bit < bits; bit += 1) {
      const along = bit * barPx + barPx / 2;
      const [x, y] = turned === 'no' ? [along, canvas.height / 2] : [canvas.width / 2, canvas.height - along];
      const [red = 0] = context.getImageData(x, y, 1, 1).data;
      if (red > 128) number += 2 ** bit;
    }
    return number;
  }, barsOf(clip));
}
