import os from 'node:os';
import type { Exercise, View } from '../../../engine/exercises/exercise.ts';
import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import { measureSet } from '../../../engine/motion/set/measureSet.ts';
import { suggest } from '../../../engine/motion/suggest/suggest.ts';
import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import type { SetUp } from '../../../engine/recording/setUp.ts';
import { type JobStep, sayJob, stepOf } from '../../../engine/wording/sayJob.ts';
import { sayProblem } from '../../../engine/wording/sayProblem.ts';
import { problemOf } from '../../backend/context/problems.ts';
import { recordingOf } from '../../backend/measure/measurementOfClip.ts';
import { recordMotion } from '../../backend/measure/recordMotion.ts';
import { type ClipProbe, probeClip } from '../../backend/media/probe/probeClip.ts';
import { findMediaTools, type MediaTools } from '../../backend/media/tools/mediaTools.ts';
import { type Problem, ProblemError } from '../../contract/reply.ts';
import type { Host } from '../run/host.ts';
import { cancelledError, oneLine } from '../run/outcome.ts';

/** How clips are measured, as the options say. */
export type MeasureHow = {
  readonly exercise: Exercise;
  readonly rubricCriteria: readonly string[];
  /** Null = as the joints show it. */
  readonly view: View | null;
  readonly joints: boolean;
  readonly setUp: SetUp;
};

/** What came of one clip. */
export type MeasuredFile =
  | {
      readonly kind: 'measured';
      /** As the person named it. */
      readonly file: string;
      readonly probe: ClipProbe;
      readonly measurement: SetMeasurement;
      readonly suggestions: readonly Suggestion[];
    }
  | { readonly kind: 'failed'; readonly file: string; readonly problem: Problem };

/** Measures clips one after the other; one that fails does not stop the others. Throws `cancelled` after Ctrl-C. */
export async function measureFiles(
  host: Host,
  files: readonly string[],
  how: MeasureHow,
): Promise<readonly MeasuredFile[]> {
  const tools = await findMediaTools();
  const measured: MeasuredFile[] = [];
  for (const [index, file] of files.entries()) {
    const onProgress = (share: number, step: JobStep) =>
      host.progress.show((index + share) / files.length, sayJob(files.length === 1 ? step : stepOf(file, step), 'en'));
    try {
      measured.push(await measureFile(host, tools, { file, how, onProgress }));
    } catch (error) {
      if (host.signal.aborted) throw cancelledError();
      const problem = problemOf(error, `measuring ${file}`);
      if (files.length > 1) host.say(oneLine(`${file}: ${sayProblem(problem.message, 'en')}`));
      measured.push({ kind: 'failed', file, problem });
    }
  }
  return measured;
}

async function measureFile(
  host: Host,
  tools: MediaTools,
  {
    file,
    how,
    onProgress,
  }: {
    readonly file: string;
    readonly how: MeasureHow;
    readonly onProgress: (share: number, step: JobStep) => void;
  },
): Promise<MeasuredFile> {
  const { exercise, rubricCriteria, view, joints, setUp } = how;
  const clip = host.resolve(file);
  const probe = await probeClip(tools, clip, { signal: host.signal });
  const { table, shown, realTimeFactor } = probe;
  requireFrames(file, setUp, table.ticks.length);
  const order = {
    tools,
    clip,
    table,
    shown,
    framesPerSecond: probe.meanFps * realTimeFactor,
    clicks: setUp.clicks,
    wanted: joints ? (['disc', 'joints'] as const) : (['disc'] as const),
    threads: os.availableParallelism(),
    courtesy: 'nobody' as const,
  };
  const onSlower = () =>
    host.say('The fast library that finds joints can’t be loaded here, so finding them takes three times as long.');
  const recording = recordingOf(await recordMotion(order, { signal: host.signal, onProgress, onSlower }));
  const measurement = measureSet({ recording, table, shown, realTimeFactor, exercise, view, setUp, edges: [] });
  const suggestions = suggest({ measurement, exercise, goal: 'growth', plan: null, rubricCriteria, view });
  return { kind: 'measured', file, probe, measurement, suggestions };
}

function requireFrames(file: string, { clicks }: SetUp, frames: number): void {
  const beyond = clicks.find(({ frame }) => frame >= frames);
  if (!beyond) return;
  throw ProblemError.inWords(
    'conflict',
    `"${file}" has ${frames} frames, so there is no frame ${beyond.frame} to find the ${beyond.what} in; choose an earlier one.`,
  );
}
