import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { speedLossPct } from '../../../../engine/motion/set/summarise.ts';

const exact = (...values: number[]) => values.map((value) => ({ value, plusMinus: 0 }));
const speeds = fc.array(
  fc.record({
    value: fc.double({ min: 0.05, max: 2, noNaN: true }),
    plusMinus: fc.double({ min: 0, max: 0.1, noNaN: true }),
  }),
  { minLength: 2, maxLength: 20 },
);

describe('speed loss', () => {
  it('is from the fastest rep, wherever it was, to the last', () => {
    expect(speedLossPct(exact(0.5, 0.4))?.value).toBeCloseTo(20, 10);
    expect(speedLossPct(exact(0.4, 0.5, 0.45))?.value).toBeCloseTo(10, 10);
    expect(speedLossPct(exact(0.4, 0.5))).toEqual({ value: 0, plusMinus: 0 });
  });

  it('lies between 0 and 100 and is the same in any unit of speed', () => {
    fc.assert(
      fc.property(speeds, (reps) => {
        const loss = speedLossPct(reps);
        const doubled = speedLossPct(reps.map((rep) => ({ value: 2 * rep.value, plusMinus: 2 * rep.plusMinus })));
        expect(loss?.value).toBeGreaterThanOrEqual(0);
        expect(loss?.value).toBeLessThan(100);
        expect(doubled?.value).toBeCloseTo(loss?.value ?? Number.NaN, 9);
        expect(doubled?.plusMinus).toBeCloseTo(loss?.plusMinus ?? Number.NaN, 9);
      }),
    );
  });

  // By hand: 0.5 ± 0.01 and 0.4 ± 0.01 give a share of 0.8 ± √(0.01² + (0.8 × 0.01)²) / 0.5.
  it('is as unsure as both its speeds', () => {
    const loss = speedLossPct([
      { value: 0.5, plusMinus: 0.01 },
      { value: 0.4, plusMinus: 0.01 },
    ]);
    expect(loss?.plusMinus).toBeCloseTo((100 * Math.sqrt(0.000164)) / 0.5, 9);
  });

  it('is unknown for one rep, or a rep without speed', () => {
    expect(speedLossPct([])).toBeNull();
    expect(speedLossPct(exact(0.5))).toBeNull();
    expect(speedLossPct(exact(0.5, 0))).toBeNull();
    expect(speedLossPct(exact(0.5, Number.NaN))).toBeNull();
  });
});
