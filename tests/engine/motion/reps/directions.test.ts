import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { smoothCurve } from '../../../../engine/motion/reps/curve.ts';
import { evenTimes, liftOfSet, type RepPlan } from './lifts.ts';
import { partsOf, press, pulldown, repsOfLift, squat, wholeReps } from './readReps.ts';

const plans: RepPlan[] = [1.1, 1.4, 1.7].map((firstS) => ({ firstS, pauseS: 0.5, secondS: 2, restS: 0.6 }));

describe('exercises that begin with the way up', () => {
  it('have their concentric first and their pause at the top', () => {
    const lift = liftOfSet({ reps: plans, towards: 1 });
    const reps = repsOfLift(lift, { timesS: evenTimes(lift.endS, 30) }, press);
    expect(reps.map(({ concentric }) => concentric.direction)).toEqual(['up', 'up', 'up']);
    reps.forEach((rep, index) => {
      expect(partsOf(rep).firstS).toBeCloseTo(plans[index]?.firstS ?? 0, 1);
      expect(partsOf(rep).pauseS).toBeCloseTo(0.5, 1);
      expect(rep.eccentric.endS - rep.eccentric.startS).toBeCloseTo(2, 1);
    });
  });
});

describe('exercises whose load is low when the muscles are short', () => {
  it('have their concentric downward', () => {
    const lift = liftOfSet({ reps: plans, towards: -1 });
    const reps = repsOfLift(lift, { timesS: evenTimes(lift.endS, 30) }, pulldown);
    expect(reps.map(({ concentric }) => concentric.direction)).toEqual(['down', 'down', 'down']);
    expect(reps.map(({ eccentric }) => eccentric.direction)).toEqual(['up', 'up', 'up']);
    reps.forEach((rep, index) => {
      expect(rep.concentric.endS - rep.concentric.startS).toBeCloseTo(plans[index]?.firstS ?? 0, 1);
    });
  });
});

const seconds = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const plan = fc.record({
  firstS: seconds(0.6, 3),
  pauseS: seconds(0, 1),
  secondS: seconds(0.6, 2),
  restS: seconds(0.2, 1),
  rangeM: seconds(0.45, 0.6),
});
const anySet = fc.array(plan, { minLength: 1, maxLength: 4 }).map((reps) => liftOfSet({ reps, towards: -1 }));
const smoothing = { cutOffHz: 6, longestGapS: 0.25 };

type Reading = {
  readonly exercise?: Parameters<typeof wholeReps>[1];
  readonly stepS?: number;
  readonly cutOffHz?: number;
};

function durations(
  heightAt: (timeS: number) => number,
  timesS: readonly number[],
  { exercise = squat, stepS = 1 / 60, cutOffHz = smoothing.cutOffHz }: Reading = {},
): number[] {
  const curve = smoothCurve(timesS, timesS.map(heightAt), { ...smoothing, stepS, cutOffHz });
  return wholeReps(curve, exercise).flatMap((rep) => Object.values(partsOf(rep)));
}

/** To 2 ms: where two samples are equally high but for rounding, either may be taken for the turn. */
function expectAlike(one: readonly number[], other: readonly number[], scale = 1): void {
  expect(one).toHaveLength(other.length);
  one.forEach((value, index) => {
    expect(Math.abs(value - (other[index] ?? 0) * scale)).toBeLessThan(0.002);
  });
}

describe('durations', () => {
  it('stay when up and down change places', () => {
    fc.assert(
      fc.property(anySet, (lift) => {
        const times = evenTimes(lift.endS, 30);
        const upsideDown = { beginsWith: 'eccentric', lowerEnd: 'shortened' } as const;
        expectAlike(
          durations((timeS) => -lift.heightAt(timeS), times, { exercise: upsideDown }),
          durations(lift.heightAt, times),
        );
      }),
      { numRuns: 40 },
    );
  });

  it('stay wherever the load starts', () => {
    fc.assert(
      fc.property(anySet, seconds(-3, 3), (lift, offM) => {
        const times = evenTimes(lift.endS, 30);
        expectAlike(
          durations((timeS) => lift.heightAt(timeS) + offM, times),
          durations(lift.heightAt, times),
        );
      }),
      { numRuns: 40 },
    );
  });

  it('stretch with time', () => {
    fc.assert(
      fc.property(anySet, seconds(0.5, 4), (lift, factor) => {
        const times = evenTimes(lift.endS, 30);
        const stretched = durations(
          (timeS) => lift.heightAt(timeS / factor),
          times.map((timeS) => timeS * factor),
          { stepS: factor / 60, cutOffHz: smoothing.cutOffHz / factor },
        );
        expectAlike(stretched, durations(lift.heightAt, times), factor);
      }),
      { numRuns: 40 },
    );
  });
});
