import type { Exercise } from '../../../../engine/exercises/exercise.ts';
import type { Curve } from '../../../../engine/motion/reps/curve.ts';
import { type FoundReps, findReps } from '../../../../engine/motion/reps/findReps.ts';
import type { Move } from '../../../../engine/motion/reps/moves.ts';
import type { Scale } from '../../../../engine/motion/set/calibrate.ts';
import { type Path, pathOf } from '../../../../engine/motion/set/tracked.ts';
import { whiteNoise } from '../signal/whiteNoise.ts';
import type { Lift } from './lifts.ts';

/** A millimetre a pixel, upright. */
const millimetres: Scale = {
  calibration: { from: 'knownLength', metresPerPixel: 0.001, relativeUncertainty: 0, offAxisDeg: null, rollDeg: 0 },
  metresPerPixelUp: 0.001,
  metresPerPixelAcross: 0.001,
};

export type Seen = {
  readonly timesS: readonly number[];
  /** Standard deviation of each place. */
  readonly noiseM?: number;
  readonly seed?: number;
};

/** The path that the engine makes of a lift seen at some times. */
export function pathOfLift({ heightAt }: Lift, { timesS, noiseM = 0, seed = 1 }: Seen): Path {
  const noise = whiteNoise(timesS.length, seed);
  const sightings = timesS.map((timeS, frame) => ({
    xPx: 300,
    yPx: 1500 - 1000 * (heightAt(timeS) + noiseM * (noise[frame] ?? 0)),
    confidence: 1,
  }));
  return pathOf(
    {
      follows: 'disc',
      because: 'discMovesWithLifter',
      sightings,
      camera: null,
      wanderPx: 0,
      givesRange: true,
      isGesture: null,
      doubtShare: 0,
    },
    timesS,
    millimetres,
  );
}

export const squat = { beginsWith: 'eccentric', lowerEnd: 'stretched' } as const;
export const press = { beginsWith: 'concentric', lowerEnd: 'stretched' } as const;
export const pulldown = { beginsWith: 'concentric', lowerEnd: 'shortened' } as const;

/** What a rep must cover at least. */
export const leastRangeM = 0.06;

type Kind = Pick<Exercise, 'beginsWith' | 'lowerEnd'>;

/** All that is found in a curve of which every frame was seen. */
export const foundIn = (curve: Curve, exercise: Kind = squat): FoundReps =>
  findReps(curve, { exercise, limits: { least: leastRangeM, most: null }, seenShare: () => 1, isGesture: () => false });

/** A rep with both its moves. */
export type WholeRep = {
  readonly eccentric: Move;
  readonly concentric: Move;
  readonly beginsWith: 'eccentric' | 'concentric';
};

/** The reps that count and were seen whole. */
export function wholeReps(curve: Curve, exercise: Kind = squat): WholeRep[] {
  return foundIn(curve, exercise).counted.flatMap(({ moves: { eccentric, ...moves } }) =>
    eccentric ? [{ ...moves, eccentric }] : [],
  );
}

export const repsOfLift = (lift: Lift, seen: Seen, exercise: Kind = squat): WholeRep[] =>
  wholeReps(pathOfLift(lift, seen).up, exercise);

/** Durations of the parts of a rep in the order in which they come, in seconds. */
export type Parts = { readonly firstS: number; readonly pauseS: number; readonly secondS: number };

export function partsOf({ eccentric, concentric, beginsWith }: WholeRep): Parts {
  const [first, second] = beginsWith === 'eccentric' ? [eccentric, concentric] : [concentric, eccentric];
  return {
    firstS: first.endS - first.startS,
    pauseS: second.startS - first.endS,
    secondS: second.endS - second.startS,
  };
}

/** The value that a share of the sizes lie at or below. */
export function quantile(values: readonly number[], share: number): number {
  const sizes = values.map(Math.abs).sort((one, other) => one - other);
  return sizes[Math.min(sizes.length - 1, Math.floor(share * sizes.length))] ?? Number.NaN;
}
