import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lowPass } from '../../../../engine/motion/signal/lowPass.ts';
import { cutOffRangeHz, residualCutOffHz } from '../../../../engine/motion/signal/noise.ts';
import { liftedM, whiteNoise } from './whiteNoise.ts';

const rootMeanSquare = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);

function lift(sampleHz: number, noiseM: number, seed: number) {
  const truth = Array.from({ length: Math.round(12 * sampleHz) }, (_, i) => liftedM(i / sampleHz));
  const noise = whiteNoise(truth.length, seed);
  return { truth, seen: truth.map((value, i) => value + noiseM * (noise[i] ?? 0)) };
}

describe('the cut-off by residual analysis', () => {
  it('lies within 3-10 Hz and below half the sampling rate, whatever the values', () => {
    const values = fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { maxLength: 60 });
    fc.assert(
      fc.property(values, fc.double({ min: 5, max: 240, noNaN: true }), (seen, sampleHz) => {
        const cutOffHz = residualCutOffHz(seen, { sampleHz });
        expect(cutOffHz).toBeGreaterThanOrEqual(Math.min(cutOffRangeHz.lowest, 0.9 * (sampleHz / 2)));
        expect(cutOffHz).toBeLessThanOrEqual(10);
        expect(cutOffHz).toBeLessThan(sampleHz / 2);
      }),
    );
    expect(cutOffRangeHz).toEqual({ lowest: 3, highest: 10 });
  });

  // Winter's definition: what the filter takes away there is as large as the noise, which is known here.
  it.each([
    [60, 0.0003],
    [60, 0.0005],
    [120, 0.0005],
    [240, 0.001],
  ])('at %d Hz takes away as much as the noise of %d m', (sampleHz, noiseM) => {
    const { seen } = lift(sampleHz, noiseM, 7);
    const cutOffHz = residualCutOffHz(seen, { sampleHz });
    expect(cutOffHz).toBeGreaterThan(cutOffRangeHz.lowest);
    const smooth = lowPass(seen, { sampleHz, cutOffHz });
    const taken = rootMeanSquare(seen.map((value, i) => value - (smooth[i] ?? 0)));
    expect(Math.abs(taken / noiseM - 1)).toBeLessThan(0.1);
  });

  it('falls as the noise rises', () => {
    const cutOffs = [0.0001, 0.0003, 0.001, 0.003, 0.01].map((noiseM) =>
      residualCutOffHz(lift(60, noiseM, 11).seen, { sampleHz: 60 }),
    );
    expect(cutOffs).toEqual(cutOffs.toSorted((a, b) => b - a));
    expect(cutOffs[0]).toBeGreaterThan(cutOffs.at(-1) ?? 0);
    expect(cutOffs.at(-1)).toBe(3);
  });

  it.each([
    [25, 0.001],
    [30, 0.0003],
    [30, 0.001],
    [30, 0.004],
    [60, 0.0003],
    [60, 0.001],
    [120, 0.001],
  ])('at %d Hz and %d m of noise is nearly as good as the best there is', (sampleHz, noiseM) => {
    const { truth, seen } = lift(sampleHz, noiseM, 3);
    const errorAt = (cutOffHz: number) => {
      const smooth = lowPass(seen, { sampleHz, cutOffHz });
      return rootMeanSquare(truth.map((value, i) => value - (smooth[i] ?? 0)));
    };
    const best = Math.min(...Array.from({ length: 29 }, (_, i) => errorAt(3 + i / 4)));
    expect(errorAt(residualCutOffHz(seen, { sampleHz }))).toBeLessThan(1.5 * best);
  });
});
