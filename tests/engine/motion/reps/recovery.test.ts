import { describe, expect, it } from 'vitest';
import { evenTimes, liftOfSet, minimumJerk, type RepPlan, raisedCosine, type Shape, variedReps } from './lifts.ts';
import { partsOf, quantile, repsOfLift } from './readReps.ts';

const sets = Array.from({ length: 12 }, (_, set) => variedReps(5, 5 * set));

type Misses = {
  readonly ways: number[];
  readonly shares: number[];
  readonly pauses: number[];
  readonly none: number[];
};

/** How far durations are off over all sets: of the ways, in seconds and as shares; of pauses; and what is read where there is none. */
function missesOf({
  framesPerSecond,
  shape,
  noiseM,
  plans = sets,
}: {
  readonly framesPerSecond: number;
  readonly shape: Shape;
  readonly noiseM: number;
  readonly plans?: readonly (readonly RepPlan[])[];
}): Misses {
  const misses: Misses = { ways: [], shares: [], pauses: [], none: [] };
  plans.forEach((reps, set) => {
    const lift = liftOfSet({ reps, towards: -1, shape });
    const read = repsOfLift(lift, { timesS: evenTimes(lift.endS, framesPerSecond), noiseM, seed: set + 1 }).map(
      partsOf,
    );
    expect(read).toHaveLength(reps.length);
    reps.forEach(({ firstS, pauseS, secondS }, rep) => {
      const found = read[rep];
      if (!found) return;
      misses.ways.push(found.firstS - firstS, found.secondS - secondS);
      misses.shares.push(found.firstS / firstS - 1, found.secondS / secondS - 1);
      if (pauseS > 0) misses.pauses.push(found.pauseS - pauseS);
      else misses.none.push(found.pauseS);
    });
  });
  return misses;
}

describe.each([25, 30, 60])('minimum-jerk reps at %d frames a second', (framesPerSecond) => {
  it('come out to a hundredth of a second, pauses too, and no pause is none', () => {
    const { ways, pauses, none } = missesOf({ framesPerSecond, shape: minimumJerk, noiseM: 0 });
    expect(quantile(ways, 0.5)).toBeLessThan(0.01);
    expect(quantile(ways, 1)).toBeLessThan(0.05);
    expect(quantile(pauses, 0.5)).toBeLessThan(0.01);
    expect(quantile(pauses, 1)).toBeLessThan(0.05);
    expect(quantile(none, 1)).toBeLessThan(0.1);
  });

  it('come out to a tenth of a second nineteen times in twenty when places are known to 1 mm', () => {
    const { ways, pauses, none } = missesOf({ framesPerSecond, shape: minimumJerk, noiseM: 0.001 });
    expect(quantile(ways, 0.5)).toBeLessThan(0.03);
    expect(quantile(ways, 0.95)).toBeLessThan(0.1);
    expect(quantile(pauses, 0.95)).toBeLessThan(0.15);
    expect(quantile(none, 0.95)).toBeLessThan(0.1);
  });
});

describe('ways that set out and stop more sharply', () => {
  it('are read to 2 % of their duration', () => {
    const { shares, none } = missesOf({ framesPerSecond: 30, shape: raisedCosine, noiseM: 0 });
    expect(quantile(shares, 0.5)).toBeLessThan(0.01);
    expect(quantile(shares, 0.95)).toBeLessThan(0.02);
    expect(quantile(none, 1)).toBeLessThan(0.1);
  });

  it('are read to 2 % when they are very slow', () => {
    const slow = { firstS: 6, pauseS: 1, secondS: 4, restS: 1 };
    const { shares } = missesOf({ framesPerSecond: 30, shape: raisedCosine, noiseM: 0, plans: [[slow, slow, slow]] });
    expect(quantile(shares, 1)).toBeLessThan(0.02);
  });
});

describe('very slow and very quick ways', () => {
  it('of 8 s down and 0.5 s up are told apart from their pauses', () => {
    const rep = { firstS: 8, pauseS: 0.5, secondS: 0.5, restS: 1 };
    const { ways, pauses } = missesOf({ framesPerSecond: 30, shape: minimumJerk, noiseM: 0.0003, plans: [[rep, rep]] });
    expect(quantile(ways, 1)).toBeLessThan(0.15);
    expect(quantile(pauses, 1)).toBeLessThan(0.15);
  });
});
