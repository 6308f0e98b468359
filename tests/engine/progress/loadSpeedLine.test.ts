import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadAtSpeedKg, loadSpeedLine } from '../../../engine/progress/loadSpeedLine.ts';

const sets = fc.array(
  fc.record({
    loadKg: fc.integer({ min: 20, max: 300 }),
    speedMps: fc.double({ min: 0.05, max: 2, noNaN: true }),
  }),
  { maxLength: 12 },
);

describe('a line of speed over load', () => {
  it('leaves the least sum of squares: no line near it leaves less', () => {
    fc.assert(
      fc.property(sets, (measured) => {
        const line = loadSpeedLine(measured);
        if (line === null) return;
        const left = (slope: number, intercept: number) =>
          measured.reduce((sum, { loadKg, speedMps }) => sum + (speedMps - intercept - slope * loadKg) ** 2, 0);
        const best = left(line.slopeMpsPerKg, line.interceptMps);
        for (const [slope, intercept] of [
          [1e-4, 0],
          [-1e-4, 0],
          [0, 1e-3],
          [0, -1e-3],
          [1e-4, -1e-3],
        ] as const) {
          expect(left(line.slopeMpsPerKg + slope, line.interceptMps + intercept)).toBeGreaterThan(best);
        }
        expect(line.slopeMpsPerKg).toBeLessThan(0);
        expect(line.rSquared).toBeGreaterThanOrEqual(0);
        expect(line.rSquared).toBeLessThanOrEqual(1 + 1e-9);
      }),
    );
  });

  it('tells the load for a speed, and back', () => {
    const line = { slopeMpsPerKg: -0.01, interceptMps: 1.5, rSquared: 1 };
    expect(loadAtSpeedKg(line, 0.5)).toBeCloseTo(100, 10);
    expect(loadAtSpeedKg(line, 1.5)).toBeCloseTo(0, 10);
  });

  it('is none without two different loads, or where speed does not fall', () => {
    expect(loadSpeedLine([])).toBeNull();
    expect(loadSpeedLine([{ loadKg: 100, speedMps: 0.5 }])).toBeNull();
    expect(
      loadSpeedLine([
        { loadKg: 100, speedMps: 0.5 },
        { loadKg: 100, speedMps: 0.4 },
      ]),
    ).toBeNull();
    expect(
      loadSpeedLine([
        { loadKg: 100, speedMps: 0.5 },
        { loadKg: 120, speedMps: 0.6 },
      ]),
    ).toBeNull();
    expect(loadSpeedLine([0.7, 0.6, 0.1].map((speedMps) => ({ loadKg: 22.7, speedMps })))).toBeNull();
    expect(loadSpeedLine([61, 70, 87].map((loadKg) => ({ loadKg, speedMps: 0.1 })))).toBeNull();
  });
});
