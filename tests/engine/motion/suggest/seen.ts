import * as v from 'valibot';
import type { Exercise } from '../../../../engine/exercises/exercise.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import { measureSet } from '../../../../engine/motion/set/measureSet.ts';
import { suggest } from '../../../../engine/motion/suggest/suggest.ts';
import type { Suggestion } from '../../../../engine/motion/suggestion.ts';
import { setUpSchema } from '../../../../engine/recording/setUp.ts';
import { shippedUnder } from '../../../seeds/shippedCatalogue.ts';
import { evenTimes, liftOf, minimumJerk, type Shape, spread } from '../reps/lifts.ts';
import { measured, shown } from '../set/seenSet.ts';
import { type Posture, seenFigure } from '../view/figure.ts';

const newest = shippedUnder(3);

/** An exercise that ships, as the newest version of the rubric judges it. */
export function newestExercise(id: string): Exercise {
  const found = newest.exercises.find((exercise) => exercise.id === id);
  if (!found) throw new Error(`No exercise ${id}.`);
  return found;
}

/** One rep of a lift: where its first way ends and its second, in metres over the start of the set, and how long each part takes. */
export type SeenRep = {
  readonly turnM: number;
  readonly finishM: number;
  readonly firstS: number;
  readonly pauseS: number;
  readonly secondS: number;
  readonly restS: number;
  readonly firstShape?: Shape;
};

/** Heights over time of some reps, after a second of rest. */
function heightsOf(reps: readonly SeenRep[]) {
  return liftOf(0, [
    { toM: 0, takesS: 1 },
    ...reps.flatMap(({ turnM, finishM, firstS, pauseS, secondS, restS, firstShape = minimumJerk }) => [
      { toM: turnM, takesS: firstS, shape: firstShape },
      { toM: turnM, takesS: pauseS },
      { toM: finishM, takesS: secondS },
      { toM: finishM, takesS: restS },
    ]),
  ]);
}

const proposedFor = (measurement: SetMeasurement, exercise: Exercise): readonly Suggestion[] =>
  suggest({
    ...{ measurement, exercise, goal: 'growth', plan: null, view: null },
    rubricCriteria: newest.rubric.criteria.map(({ id }) => id),
  });

export const toMendOf = (suggestions: readonly Suggestion[]): Suggestion[] =>
  suggestions.filter(({ severity }) => severity !== 'keep');

export type Film = {
  readonly exercise: Exercise;
  readonly framesPerSecond?: number;
  readonly noisePx?: number;
  readonly seed?: number;
  /** Forward sway of the load over time. */
  readonly forwardM?: (timeS: number) => number;
};

/** What is proposed of a load with a disc, seen square-on at 3 mm a pixel with white noise. */
export function proposedOfLoad(reps: readonly SeenRep[], film: Film): readonly Suggestion[] {
  const { exercise, framesPerSecond = 30, noisePx = 0.7, seed = 1, forwardM } = film;
  const lift = heightsOf(reps);
  const measurement = measured({
    ...{ timesS: evenTimes(lift.endS, framesPerSecond), heightM: lift.heightAt, exercise, view: 'side' },
    ...(forwardM && { rightM: forwardM }),
    noise: { px: noisePx, seed },
  });
  return proposedFor(measurement, exercise);
}

/** The same of a point that was clicked, so that nothing gives a scale. */
export function proposedOfPoint(
  reps: readonly SeenRep[],
  { exercise, framesPerSecond = 30, noisePx = 0.7, seed = 1 }: Film,
) {
  const lift = heightsOf(reps);
  const measurement = measured({
    ...{ timesS: evenTimes(lift.endS, framesPerSecond), heightM: lift.heightAt, exercise, pointOnly: true },
    noise: { px: noisePx, seed },
  });
  return proposedFor(measurement, exercise);
}

/** What is proposed of a squat without a load, seen through the joints of a figure whose depth goes from 0 to 1. */
export function proposedOfBody(reps: readonly SeenRep[], film: Film & { readonly azimuthDeg?: number }) {
  const { exercise, framesPerSecond = 30, noisePx = 2.5, seed = 1, azimuthDeg = 90 } = film;
  const lift = heightsOf(reps);
  const timesS = evenTimes(lift.endS, framesPerSecond);
  const postures = timesS.map((timeS): Posture => {
    const share = -lift.heightAt(timeS);
    return { kneeDeg: 155 * share, leanDeg: 40 * share };
  });
  const { frames } = seenFigure(postures, { azimuthDeg, noisePx, seed });
  const measurement = measureSet({
    recording: {
      disc: null,
      point: null,
      joints: { method: 'drawn', everyFrames: 1, frames: [...frames] },
      warnings: [],
    },
    table: {
      timeBase: { numerator: 1, denominator: 90_000 },
      ticks: timesS.map((timeS) => Math.round(timeS * 90_000)),
      endTicks: Math.round(lift.endS * 90_000) + 3000,
    },
    ...{ shown, realTimeFactor: 1, exercise, view: null, setUp: v.parse(setUpSchema, {}), edges: [] },
  });
  return { measurement, proposed: proposedFor(measurement, exercise) };
}

/** Sets of 3 to 6 reps without a fault, as they differ from lifter to lifter: small differences within what is asked. */
export function faultlessSet(
  seed: number,
  { turnM, firstS, pauseS }: { readonly turnM: number; readonly firstS: number; readonly pauseS: number },
): SeenRep[] {
  return Array.from({ length: 3 + (seed % 4) }, (_, rep) => {
    const at = 1 + 7 * seed + rep;
    const about = (base: 2 | 3 | 5 | 7) => 2 * spread(at, base) - 1;
    return {
      turnM: turnM * (1 + 0.015 * about(2)),
      finishM: 0.01 * turnM * about(3),
      firstS: firstS + 0.15 * about(5),
      pauseS: pauseS + 0.1 * about(7),
      secondS: 1.2 + 0.15 * about(2),
      restS: 0.7 + 0.1 * about(3),
    };
  });
}
