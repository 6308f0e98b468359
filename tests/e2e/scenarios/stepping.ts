import assert from 'node:assert/strict';
import { readdir } from 'node:fs/promises';
import path from 'node:path';
import type { Bench } from '../harness/bench.ts';
import { addOneClip, footage } from '../harness/oneClip.ts';
import type { Report } from '../harness/report.ts';
import { goToFrame, openReview } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { frameAt, readTruth } from '../harness/truth.ts';
import { checkShown, jumpAndCheck, seekByPointer, stepAndCheck } from './stepping/checkShown.ts';
import { framesOf, scatteredFrames } from './stepping/frames.ts';
import { checkPictures } from './stepping/pictures.ts';

const steps = 20;
/** Frames are told apart by their times: no two frames of any clip here are that close. */
const toleranceS = 0.001;

type SteppedClip = {
  readonly name: keyof typeof footage;
  readonly truth: string;
  readonly plays: 'itself' | 'a proxy';
};

const clips: readonly SteppedClip[] = [
  { name: 'variableRate', truth: 'squat-variable-rate', plays: 'itself' },
  { name: 'portrait', truth: 'press-portrait', plays: 'itself' },
  { name: 'hevc', truth: 'hinge-hevc', plays: 'a proxy' },
];

/** Each frame once, in order, both ways, on turned, variable and converted footage. */
export const stepping: Scenario = {
  name: 'stepping',
  run: async (bench, report) => {
    for (const clip of clips) await stepThrough(bench, report, clip);
  },
};

async function stepThrough(bench: Bench, report: Report, { name, truth, plays }: SteppedClip): Promise<void> {
  const folder = bench.newFolder(`stepping-${name}`);
  const app = await bench.launch(folder);
  const { sessionId, clipId } = await addOneClip(app, footage[name]);
  const { pts, video, reps } = await readTruth(truth);
  const { table, playback } = await app.ask('clips.frameTable', { clipId });
  const played = await framesOf(plays === 'itself' ? footage[name] : await proxyIn(folder));
  const shownFrom = { app, playedS: plays === 'itself' ? pts : played.startsS, toleranceS };

  await report.check(`${truth}: the stored table is the true one, and plays as ${plays}`, async () => {
    checkTimes(table, pts, 1e-6);
    checkTimes(playback, shownFrom.playedS, 1e-6);
    assert.equal(shownFrom.playedS.length, video.frames);
    const { media } = await app.ask('review.get', { sessionId });
    assert.equal(media[0]?.proxy, plays === 'a proxy');
  });

  await app.page.reload();
  await openReview(app, sessionId);
  const from = 60;
  await goToFrame(app, from);

  await report.check(`${truth}: ${steps} single steps on show each frame once, in order`, async () => {
    for (let step = 1; step <= steps; step += 1) await stepAndCheck(shownFrom, 'Shift+ArrowRight', from + step);
  });
  await report.check(`${truth}: ${steps} single steps back show each frame once, in order`, async () => {
    for (let step = 1; step <= steps; step += 1) await stepAndCheck(shownFrom, 'Shift+ArrowLeft', from + steps - step);
  });
  await report.check(`${truth}: the first and the last frame can be reached, and left again`, async () => {
    await jumpAndCheck(shownFrom, 'End', video.frames - 1);
    await stepAndCheck(shownFrom, 'Shift+ArrowRight', video.frames - 1);
    await stepAndCheck(shownFrom, 'Shift+ArrowLeft', video.frames - 2);
    await jumpAndCheck(shownFrom, 'Home', 0);
    await stepAndCheck(shownFrom, 'Shift+ArrowLeft', 0);
    await stepAndCheck(shownFrom, 'Shift+ArrowRight', 1);
  });
  await report.check(`${truth}: over keyframes, on and back`, async () => {
    const inside = played.keyframes.filter((key) => key > 0 && key < video.frames - 1);
    const picked = inside.filter((_, index) => index % Math.ceil(inside.length / 4) === 0);
    assert.ok(picked.length > 1);
    for (const key of picked) {
      await goToFrame(app, key - 1);
      await checkShown(shownFrom, key - 1);
      for (const frame of [key, key + 1]) await stepAndCheck(shownFrom, 'Shift+ArrowRight', frame);
      for (const frame of [key, key - 1]) await stepAndCheck(shownFrom, 'Shift+ArrowLeft', frame);
    }
  });
  await report.check(`${truth}: places pointed at in the strip show the frame that is there`, async () => {
    const endS = (table.endTicks * table.timeBase.numerator) / table.timeBase.denominator;
    let reached = 0;
    for (const frame of scatteredFrames(video.frames, 12)) {
      if (!(await seekByPointer(app, { startsS: pts, endS }, frame))) continue;
      await checkShown(shownFrom, frame);
      reached += 1;
    }
    assert.ok(reached > 5, `${reached} frames were wide enough to point at`);
  });
  await report.check(`${truth}: the picture on screen is the very frame, told apart from its neighbours`, async () => {
    // A third and two thirds into a phase the figure moves fast, so that neighbours differ.
    const phases = reps.slice(0, 2).flatMap(({ phases_s }) => [phases_s.eccentric, phases_s.concentric]);
    const seconds = phases.flatMap(([startS, endS]) => [(2 * startS + endS) / 3, (startS + 2 * endS) / 3]);
    const frames = seconds.map((at) => frameAt(pts, at));
    await checkPictures(app, footage[name], frames);
  });
  await app.close();
}

type Table = {
  readonly ticks: readonly number[];
  readonly timeBase: { readonly numerator: number; readonly denominator: number };
};

function checkTimes({ ticks, timeBase }: Table, expectedS: readonly number[], within: number): void {
  assert.equal(ticks.length, expectedS.length);
  for (const [frame, tick] of ticks.entries()) {
    const seconds = (tick * timeBase.numerator) / timeBase.denominator;
    const expected = expectedS[frame] ?? Number.NaN;
    assert.ok(Math.abs(seconds - expected) <= within, `frame ${frame}: ${seconds} instead of ${expected}`);
  }
}

async function proxyIn(folder: string): Promise<string> {
  const library = path.join(folder, 'library');
  const found = (await readdir(library, { recursive: true })).filter((file) => file.endsWith('-proxy.mp4'));
  assert.equal(found.length, 1, `one proxy among ${found}`);
  return path.join(library, found[0] ?? '');
}
