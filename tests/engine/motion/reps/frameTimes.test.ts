import { describe, expect, it } from 'vitest';
import { evenTimes, liftOfSet, spread, variedReps } from './lifts.ts';
import { partsOf, quantile, repsOfLift } from './readReps.ts';

/** Frames 10-50 ms apart, and every fortieth a gap of 170 ms, as phones drop them. */
function unevenTimes(endS: number): number[] {
  const times = [0];
  for (let frame = 1; (times.at(-1) ?? endS) < endS; frame += 1) {
    times.push((times.at(-1) ?? 0) + (frame % 40 === 0 ? 0.17 : 0.01 + 0.04 * spread(frame, 3)));
  }
  return times;
}

const plans = variedReps(5, 20);
const lift = liftOfSet({ reps: plans, towards: -1 });

describe('uneven frames with gaps up to 170 ms', () => {
  it('give the same reps as even ones', () => {
    const reps = repsOfLift(lift, { timesS: unevenTimes(lift.endS) }).map(partsOf);
    expect(reps).toHaveLength(plans.length);
    const misses = plans.flatMap(({ firstS, secondS }, rep) => [
      (reps[rep]?.firstS ?? 0) - firstS,
      (reps[rep]?.secondS ?? 0) - secondS,
    ]);
    expect(quantile(misses, 0.5)).toBeLessThan(0.02);
    expect(quantile(misses, 1)).toBeLessThan(0.1);
  });
});

describe('frames in which nothing was seen', () => {
  const slow = liftOfSet({
    reps: [1, 2, 3].map(() => ({ firstS: 2, pauseS: 0.5, secondS: 1, restS: 1 })),
    towards: -1,
  });
  const times = evenTimes(slow.endS, 30);
  const without = (fromS: number, toS: number) =>
    repsOfLift(slow, { timesS: times.filter((timeS) => timeS <= fromS || timeS >= toS) });

  it('are bridged for a fifth of a second', () => {
    const reps = without(1.9, 2.1);
    expect(reps).toHaveLength(3);
    expect(Math.abs((partsOfFirst(reps).firstS ?? 0) - 2)).toBeLessThan(0.05);
  });

  it('make no rep up where they last half of one', () => {
    // Rep 2 runs from 5.5 s to 9 s; its bottom is not seen.
    const reps = without(6, 8.6);
    expect(reps).toHaveLength(2);
  });

  const partsOfFirst = (reps: ReturnType<typeof without>) => (reps[0] ? partsOf(reps[0]) : { firstS: undefined });
});
