import { describe, expect, it } from 'vitest';
import { type Curve, smoothCurve } from '../../../../engine/motion/reps/curve.ts';
import { moveBetween } from '../../../../engine/motion/reps/moves.ts';
import { evenTimes, liftOf, minimumJerk, raisedCosine } from './lifts.ts';

const stepS = 1 / 60;

/** A way up of 1 over so long between rests of a second, with a slow wander on top of it, as a smooth curve. */
function wandering(
  shape: typeof minimumJerk,
  { takesS, wander }: { readonly takesS: number; readonly wander: number },
) {
  const lift = liftOf(0, [
    { toM: 0, takesS: 1 },
    { toM: 1, takesS, shape },
    { toM: 1, takesS: 1 },
  ]);
  const timesS = evenTimes(lift.endS, 1 / stepS);
  const heights = timesS.map((timeS) => lift.heightAt(timeS) + wander * Math.sqrt(2) * Math.sin(7 * timeS + 1));
  const curve = smoothCurve(timesS, heights, { stepS, cutOffHz: 6, longestGapS: 0.25, wander });
  return { curve, startS: 1, endS: 1 + takesS };
}

/** The move between the lowest and the highest sample. */
function theMove(curve: Curve) {
  const heights = curve.values.map((value) => value ?? 0);
  return moveBetween(curve, heights.indexOf(Math.min(...heights)), heights.indexOf(Math.max(...heights)));
}

describe('ends of a move whose place wanders', () => {
  for (const takesS of [0.6, 1, 2]) {
    for (const [name, shape] of [
      ['minimum jerk', minimumJerk],
      ['a raised cosine', raisedCosine],
    ] as const) {
      it(`are within an eighth of its ${takesS} s for ${name}`, () => {
        const { curve, startS, endS } = wandering(shape, { takesS, wander: 0.01 });
        const move = theMove(curve);
        expect(Math.abs((move?.startS ?? 99) - startS)).toBeLessThan(0.125 * takesS);
        expect(Math.abs((move?.endS ?? 99) - endS)).toBeLessThan(0.125 * takesS);
      });
    }
  }

  it('do not reach into the move before where there is no rest', () => {
    const lift = liftOf(0, [
      { toM: 0, takesS: 0.5 },
      { toM: -1, takesS: 1 },
      { toM: 0, takesS: 1 },
      { toM: 0, takesS: 0.5 },
    ]);
    const timesS = evenTimes(lift.endS, 1 / stepS);
    const curve = smoothCurve(timesS, timesS.map(lift.heightAt), {
      stepS,
      cutOffHz: 6,
      longestGapS: 0.25,
      wander: 0.01,
    });
    const [turn, end] = [Math.round(1.5 / stepS), Math.round(2.7 / stepS)];
    const up = moveBetween(curve, turn, end);
    expect(Math.abs((up?.startS ?? 99) - 1.5)).toBeLessThan(0.1);
    expect(Math.abs((up?.endS ?? 99) - 2.5)).toBeLessThan(0.1);
  });
});
