import { describe, expect, it } from 'vitest';
import { smoothCurve } from '../../../../engine/motion/reps/curve.ts';
import { evenTimes, liftOf } from './lifts.ts';
import { foundIn, press, squat } from './readReps.ts';

/** The reps of a lift seen at 30 frames a second whose place wanders by a hundredth of its range. */
function repsOf(lift: ReturnType<typeof liftOf>, exercise: typeof squat | typeof press) {
  const timesS = evenTimes(lift.endS, 30);
  const options = { stepS: 1 / 60, cutOffHz: 6, longestGapS: 0.25, wander: 0.005 };
  return foundIn(smoothCurve(timesS, timesS.map(lift.heightAt), options), exercise).counted;
}

describe('the ends of reps of a body, which sways', () => {
  // A minimum-jerk movement has covered 1 % of its way after 0.105 of its time.
  it('lie where a hundredth of the way is covered, but for the turn of a squat', () => {
    const [rep] = repsOf(
      liftOf(0, [
        { toM: 0, takesS: 1 },
        { toM: -0.5, takesS: 2 },
        { toM: 0, takesS: 1.5 },
        { toM: 0, takesS: 1 },
      ]),
      squat,
    );
    expect(Math.abs((rep?.moves.eccentric?.startS ?? 0) - 1.21)).toBeLessThan(0.1);
    expect(Math.abs((rep?.moves.concentric.endS ?? 0) - 4.34)).toBeLessThan(0.1);
    expect(Math.abs((rep?.moves.eccentric?.endS ?? 0) - 3)).toBeLessThan(0.2);
  });

  it('lie there at the lock-out of a pull that is held', () => {
    const [rep] = repsOf(
      liftOf(0, [
        { toM: 0, takesS: 1 },
        { toM: 0.5, takesS: 2 },
        { toM: 0.5, takesS: 1 },
        { toM: 0, takesS: 2 },
        { toM: 0, takesS: 1 },
      ]),
      press,
    );
    expect(Math.abs((rep?.moves.concentric.endS ?? 0) - 2.79)).toBeLessThan(0.1);
    expect(Math.abs((rep?.moves.eccentric?.startS ?? 0) - 4.21)).toBeLessThan(0.1);
  });
});
