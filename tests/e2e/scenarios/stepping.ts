import assert from 'node:assert/strict';
import type { App } from '../harness/app.ts';
import type { Bench } from '../harness/bench.ts';
import { addOneClip, footage } from '../harness/oneClip.ts';
import type { Report } from '../harness/report.ts';
import { goToFrame, openReview, picture, shown, shownAt } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { frameAt, readTruth } from '../harness/truth.ts';
import { decodedFrames, differencesFromScreen } from './stepping/pictures.ts';

const steps = 20;
/** Half a millisecond: no two frames of any clip are that close. */
const toleranceS = 0.0005;

type SteppedClip = {
  readonly name: keyof typeof footage;
  readonly truth: string;
  readonly plays: 'itself' | 'a proxy';
};

const clips: readonly SteppedClip[] = [
  { name: 'squat', truth: 'squat-side', plays: 'itself' },
  { name: 'variableRate', truth: 'squat-variable-rate', plays: 'itself' },
  { name: 'portrait', truth: 'press-portrait', plays: 'itself' },
  { name: 'hevc', truth: 'hinge-hevc', plays: 'a proxy' },
];

/** Each frame once, in order, both ways, on constant, variable, turned and converted footage. */
export const stepping: Scenario = {
  name: 'stepping',
  run: async (bench, report) => {
    for (const clip of clips) await stepThrough(bench, report, clip);
  },
};

async function stepThrough(bench: Bench, report: Report, { name, truth, plays }: SteppedClip): Promise<void> {
  const app = await bench.launch(bench.newFolder(`stepping-${name}`));
  const { sessionId, clipId } = await addOneClip(app, footage[name]);
  const { pts, video, reps } = await readTruth(truth);
  const { table, playback } = await app.ask('clips.frameTable', { clipId });
  const playedS = playback.ticks.map((tick) => (tick * playback.timeBase.numerator) / playback.timeBase.denominator);

  await report.check(`${truth}: the stored table is the true one, and plays as ${plays}`, async () => {
    const seconds = table.ticks.map((tick) => (tick * table.timeBase.numerator) / table.timeBase.denominator);
    assert.equal(seconds.length, video.frames);
    for (const [frame, second] of seconds.entries())
      assert.ok(Math.abs(second - (pts[frame] ?? -1)) < 1e-6, `${frame}`);
    assert.equal(playedS.length, video.frames);
    const { media } = await app.ask('review.get', { sessionId });
    assert.equal(media[0]?.proxy, plays === 'a proxy');
  });

  await app.page.reload();
  await openReview(app, sessionId);
  const from = 60;
  await goToFrame(app, from);

  await report.check(`${truth}: ${steps} single steps on show each frame once, in order`, async () => {
    for (let step = 1; step <= steps; step += 1) await stepOnce(app, 'Shift+ArrowRight', from + step, playedS);
  });
  await report.check(`${truth}: ${steps} single steps back show each frame once, in order`, async () => {
    for (let step = 1; step <= steps; step += 1) await stepOnce(app, 'Shift+ArrowLeft', from + steps - step, playedS);
  });
  await report.check(`${truth}: the first and the last frame can be reached, and left again`, async () => {
    await app.page.getByRole('slider', { name: 'Position in the clip' }).focus();
    await app.page.keyboard.press('End');
    await checkShown(app, video.frames - 1, playedS);
    await stepOnce(app, 'Shift+ArrowLeft', video.frames - 2, playedS);
    await app.page.getByRole('slider', { name: 'Position in the clip' }).focus();
    await app.page.keyboard.press('Home');
    await checkShown(app, 0, playedS);
    await stepOnce(app, 'Shift+ArrowRight', 1, playedS);
  });
  await report.check(`${truth}: the picture on screen is the very frame, told apart from its neighbours`, async () => {
    // In the middle of a phase the figure moves fastest, so that neighbours differ.
    const phases = reps.slice(0, 2).flatMap(({ phases_s }) => [phases_s.eccentric, phases_s.concentric]);
    for (const frame of phases.map(([startS, endS]) => frameAt(pts, (startS + endS) / 2))) {
      await goToFrame(app, frame);
      const around = [frame - 1, frame, frame + 1];
      const expected = await decodedFrames(footage[name], around);
      const [before, same, after] = await differencesFromScreen(app, expected);
      assert.ok(same !== undefined && before !== undefined && after !== undefined);
      assert.ok(same < before && same < after, `frame ${frame}: ${before} ${same} ${after}`);
    }
  });
  await app.close();
}

async function stepOnce(app: App, key: string, frame: number, playedS: readonly number[]): Promise<void> {
  await app.page.keyboard.press(key);
  await checkShown(app, frame, playedS);
}

async function checkShown(app: App, frame: number, playedS: readonly number[]): Promise<void> {
  await picture(app);
  const now = await shownAt(app, frame);
  if (now.picture === 'canvas') return;
  const expected = playedS[frame] ?? Number.NaN;
  const { mediaTime } = await shown(app);
  assert.ok(Math.abs((mediaTime ?? -1) - expected) < toleranceS, `frame ${frame}: ${mediaTime} instead of ${expected}`);
}
