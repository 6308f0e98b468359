import * as v from 'valibot';
import type { Exercise, View } from '../../../../engine/exercises/exercise.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import type { ManualRep } from '../../../../engine/motion/reps/setEdges.ts';
import { measureSet } from '../../../../engine/motion/set/measureSet.ts';
import type { SetToMeasure } from '../../../../engine/motion/set/setToMeasure.ts';
import type { CameraPath, Outline, Recording, Upright } from '../../../../engine/recording/recording.ts';
import { type SetUp, setUpSchema } from '../../../../engine/recording/setUp.ts';
import { exercise } from '../../catalogue.ts';
import { whiteNoise } from '../signal/whiteNoise.ts';

/** 3 mm a pixel: a disc of 450 mm has a radius of 75 px. */
export const metresPerPixel = 0.003;
export const discRadiusPx = 75;
export const shown = { width: 1280, height: 720 } as const;

/** Posts that stand upright in the picture. */
const posts: readonly Upright[] = [120, 500, 1100].map((xPx) => ({ xPx, yPx: 360, leanDeg: 0, lengthPx: 500 }));

export type SeenSet = {
  /** Lifting seconds of each frame. */
  readonly timesS: readonly number[];
  readonly heightM: (timeS: number) => number;
  /** To the picture's right. */
  readonly rightM?: (timeS: number) => number;
  readonly outline?: Outline;
  readonly setUp?: v.InferInput<typeof setUpSchema>;
  readonly exercise?: Partial<Exercise>;
  readonly view?: View | null;
  readonly realTimeFactor?: number;
  readonly edges?: readonly ManualRep[];
  /** No disc: a clicked point is followed, so that nothing gives a scale. */
  readonly pointOnly?: boolean;
  /** Standard deviation of the height seen. */
  readonly noise?: { readonly px: number; readonly seed: number };
};

export const squareOn = { radiusPx: discRadiusPx, radiusPlusMinusPx: 0.3, axisRatio: 1, majorAxisDeg: 90 } as const;

const setUpOf = (input: v.InferInput<typeof setUpSchema>): SetUp => v.parse(setUpSchema, input);

/** What the engine measures of a load whose way is known, seen by a still camera that stands level and square. */
export const measured = (seen: SeenSet): SetMeasurement => measureSet(seenSet(seen));

/** Such a set, to be measured. */
export function seenSet({
  timesS,
  heightM,
  rightM = () => 0,
  outline = squareOn,
  setUp = { facing: 'right' },
  exercise: change = {},
  view = 'side',
  realTimeFactor = 1,
  edges = [],
  pointOnly = false,
  noise = { px: 0, seed: 1 },
}: SeenSet): SetToMeasure {
  const camera: CameraPath = { moves: false, removable: true, frames: [], uprights: [...posts] };
  const off = whiteNoise(timesS.length, noise.seed);
  const frames = timesS.map((timeS, frame) => ({
    xPx: 640 + rightM(timeS) / metresPerPixel,
    yPx: 300 - heightM(timeS) / metresPerPixel + noise.px * (off[frame] ?? 0),
    confidence: 0.9,
  }));
  const recording: Recording = {
    disc: pointOnly ? null : { method: 'drawn', frames, outline, camera },
    point: pointOnly ? { method: 'drawn', frames, camera } : null,
    joints: null,
    warnings: [],
  };
  const ticks = timesS.map((timeS) => Math.round(timeS * realTimeFactor * 90_000));
  return {
    recording,
    table: { timeBase: { numerator: 1, denominator: 90_000 }, ticks, endTicks: (ticks.at(-1) ?? 0) + 3000 },
    shown,
    realTimeFactor,
    exercise: exercise(change),
    view,
    setUp: setUpOf(setUp),
    edges,
  };
}
