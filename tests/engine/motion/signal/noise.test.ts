import { describe, expect, it } from 'vitest';
import { noiseSd } from '../../../../engine/motion/signal/noise.ts';
import { liftedM, whiteNoise } from './whiteNoise.ts';

const lift = (sampleHz: number, seconds: number) =>
  Array.from({ length: sampleHz * seconds }, (_, i) => liftedM(i / sampleHz));
const noisy = (values: readonly number[], sd: number, seed: number) => {
  const noise = whiteNoise(values.length, seed);
  return values.map((value, i) => value + sd * (noise[i] ?? 0));
};
const still = Array.from({ length: 2000 }, () => 5);

describe('the noise of a track', () => {
  it.each([0.2, 1, 30])('is found on something that stands still: %d', (sd) => {
    expect((noiseSd(noisy(still, sd, 5)) ?? 0) / sd).toBeCloseTo(1, 1);
  });

  it.each([
    [30, 0.001],
    [60, 0.001],
    [60, 0.0003],
    [240, 0.002],
  ])('is found under a lift at %d Hz: %d m', (sampleHz, sd) => {
    const found = noiseSd(noisy(lift(sampleHz, 30), sd, 17)) ?? 0;
    expect(Math.abs(found / sd - 1)).toBeLessThan(0.15);
  });

  it('is none on a parabola or a cubic', () => {
    const cubic = Array.from({ length: 50 }, (_, i) => 2 - i + 0.3 * i ** 2 - 0.01 * i ** 3);
    expect(noiseSd(cubic)).toBeLessThan(1e-9);
  });

  it('does not mind a few jumps and gaps', () => {
    const values: (number | null)[] = noisy(still, 1, 29);
    for (let i = 50; i < 2000; i += 100) values[i] = 1000;
    for (let i = 0; i < 2000; i += 97) values[i] = null;
    expect(Math.abs((noiseSd(values) ?? 0) - 1)).toBeLessThan(0.2);
  });

  it('is unknown for fewer than ten values in a row', () => {
    expect(noiseSd([])).toBeNull();
    expect(noiseSd([1, 2, 3, 4, 5, 4, 3, 2, 1])).toBeNull();
    expect(noiseSd(Array.from({ length: 100 }, (_, i) => (i % 5 === 0 ? null : i)))).toBeNull();
  });
});
