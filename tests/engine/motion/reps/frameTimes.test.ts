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

  // Each rep takes 3.5 s and rests 1 s; rep 2 begins at 5.5 s.
  it.each([
    ['the bottom of rep 2', 6, 8.6, [1, 10]],
    ['the end of rep 1 and the beginning of rep 2', 3.5, 6.5, [10]],
    ['all from the way down of rep 2 to the way up of rep 3', 6.5, 12.6, [1]],
    ['the first half of the first way down', 0, 2, [5.5, 10]],
    ['all after half of the last way up', 13, 99, [1, 5.5]],
  ])('make no rep up: without %s', (_, fromS, toS, starts) => {
    const reps = without(fromS, toS);
    expect(reps.map(({ eccentric }) => Math.round(10 * eccentric.startS) / 10)).toEqual(starts);
    for (const { eccentric, concentric } of reps) {
      expect(eccentric.range).toBeCloseTo(0.55, 2);
      expect(concentric.range).toBeCloseTo(0.55, 2);
    }
  });

  const partsOfFirst = (reps: ReturnType<typeof without>) => (reps[0] ? partsOf(reps[0]) : { firstS: undefined });
});
