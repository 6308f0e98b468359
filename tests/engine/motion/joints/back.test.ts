import { describe, expect, test } from 'vitest';
import { type BackPoints, backChangeDeg } from '../../../../engine/motion/joints/angles.ts';

/** A back of two 200-pixel pieces, leaning to the picture's right, its upper piece bent on by so many degrees. */
function back(leanDeg: number, bentDeg: number): BackPoints {
  const up = (from: { xPx: number; yPx: number }, deg: number) => ({
    xPx: from.xPx + 200 * Math.sin((deg * Math.PI) / 180),
    yPx: from.yPx - 200 * Math.cos((deg * Math.PI) / 180),
  });
  const seat = { xPx: 300, yPx: 500 };
  const middle = up(seat, leanDeg);
  return [seat, middle, up(middle, leanDeg + bentDeg)];
}
const mirrored = ([a, b, c]: BackPoints): BackPoints => {
  const flip = ({ xPx, yPx }: { readonly xPx: number; readonly yPx: number }) => ({ xPx: 854 - xPx, yPx });
  return [flip(a), flip(b), flip(c)];
};

describe('three points along the back', () => {
  test.each([
    [5, 25, 20],
    [5, -10, -15],
    [12, 12, 0],
  ])('from a bend of %i to one of %i degrees: %i rounder, however far the trunk leans', (before, after, change) => {
    for (const lean of [20, 60, 85]) {
      expect(backChangeDeg(back(10, before), back(lean, after), 'right').value).toBeCloseTo(change, 6);
    }
  });

  test('means the same whichever way the lifter faces', () => {
    expect(backChangeDeg(mirrored(back(10, 0)), mirrored(back(70, 18)), 'left').value).toBeCloseTo(18, 6);
  });

  test('clicks two pixels off stay within the stated uncertainty', () => {
    const sure = backChangeDeg(back(10, 0), back(70, 18), 'right');
    const [seat, middle, shoulders] = back(70, 18);
    const off = backChangeDeg(
      back(10, 0),
      [seat, { xPx: middle.xPx + 1.4, yPx: middle.yPx + 1.4 }, shoulders],
      'right',
    );
    expect(Math.abs(off.value - 18)).toBeLessThanOrEqual(sure.plusMinus);
    expect(sure.plusMinus).toBeLessThan(3);
  });
});
