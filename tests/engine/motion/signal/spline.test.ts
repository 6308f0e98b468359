import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splineThrough } from '../../../../engine/motion/signal/evenGrid.ts';

const number = fc.double({ min: -100, max: 100, noNaN: true });

describe('a natural cubic spline', () => {
  it('goes through its points and keeps the value of the nearest end outside', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.integer({ min: 1, max: 50 }), number), { minLength: 1 }), (steps) => {
        let x = 0;
        const xs = steps.map(([step]) => {
          x += step;
          return x;
        });
        const ys = steps.map(([, y]) => y);
        const spline = splineThrough(xs, ys);
        for (const [i, at] of xs.entries()) expect(spline(at)).toBeCloseTo(ys[i] ?? Number.NaN, 9);
        expect(spline(-5)).toBeCloseTo(ys[0] ?? Number.NaN, 9);
        expect(spline(x + 5)).toBeCloseTo(ys.at(-1) ?? Number.NaN, 9);
      }),
    );
  });

  // By hand: through (0, 0), (1, 1), (2, 0) the bend in the middle is −3, so at 1/2 it is 1/2 + 3/16.
  it('bends as computed by hand', () => {
    const spline = splineThrough([0, 1, 2], [0, 1, 0]);
    expect(spline(0.5)).toBeCloseTo(0.6875, 12);
    expect(spline(1.5)).toBeCloseTo(0.6875, 12);
  });

  it.each([
    { xs: [], ys: [] },
    { xs: [0, 1], ys: [0] },
    { xs: [0, 0], ys: [0, 1] },
    { xs: [1, 0], ys: [0, 1] },
    { xs: [0, Number.NaN], ys: [0, 1] },
  ])('refuses %o', ({ xs, ys }) => {
    expect(() => splineThrough(xs, ys)).toThrow(RangeError);
  });
});
