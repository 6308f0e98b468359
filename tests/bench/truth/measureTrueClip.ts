import path from 'node:path';
import * as v from 'valibot';
import { loadCatalogue } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import { type ClipProbe, probeClip } from '../../../electron/backend/media/probe/probeClip.ts';
import { rootFolder } from '../../../electron/launch/folders.ts';
import { findExercise } from '../../../engine/exercises/catalogue.ts';
import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import { measureSet } from '../../../engine/motion/set/measureSet.ts';
import type { Recording } from '../../../engine/recording/recording.ts';
import { setUpSchema } from '../../../engine/recording/setUp.ts';
import { type Compared, compare } from './compare.ts';
import { type HowToRecord, recordingOfFile } from './recordings.ts';
import type { TrueClip } from './trueClips.ts';

export type MeasuredTrueClip = {
  readonly clip: TrueClip;
  readonly first: 'eccentric' | 'concentric';
  readonly measurement: SetMeasurement;
  readonly compared: Compared;
  /** By a recording that other code of the same method made. */
  readonly isOlder: boolean;
};

const catalogue = loadCatalogue(rootFolder);

/** Measures a clip by its recording; null when it is not recorded and may not be looked at. */
export async function measureTrueClip(clip: TrueClip, how: HowToRecord): Promise<MeasuredTrueClip | null> {
  const probe = await probeClip(how.tools, clip.file);
  const kept = await recordingOfFile(clip.file, probe, how);
  return kept && { ...measureRecording(clip, probe, kept.recording), isOlder: kept.isOlder };
}

/** Measures a clip as a coach does who only names the exercise: no view, no way the lifter faces, no click. */
export function measureRecording(clip: TrueClip, probe: ClipProbe, recording: Recording): MeasuredTrueClip {
  const exercise = findExercise(catalogue, clip.exercise);
  if (!exercise) throw new Error(`There is no exercise ${clip.exercise} for ${path.basename(clip.file)}.`);
  const measurement = measureSet({
    ...{ recording, exercise, table: probe.table, shown: probe.shown, realTimeFactor: probe.realTimeFactor },
    ...{ view: null, setUp: v.parse(setUpSchema, {}), edges: [] },
  });
  const first = exercise.beginsWith === 'concentric' ? 'concentric' : 'eccentric';
  return { clip, first, measurement, compared: compare(clip, measurement, first), isOlder: false };
}
