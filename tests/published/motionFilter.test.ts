import { describe, expect, it } from 'vitest';
import {
  butterworthCoefficients,
  type Coefficients,
  lowPass,
  passCorrection,
  singlePass,
} from '../../engine/motion/signal/lowPass.ts';

// Winter, Biomechanics and Motor Control of Human Movement, 4th ed., p. 69, and Robertson et al., Research Methods in
// Biomechanics, 2nd ed., p. 288, as quoted: the recursion and the correction for several passes. The coefficients were
// computed from it apart from this program.
const table = [
  [6, 60, 1, 0.06745527, 0.13491055, 1.1429805, -0.4128016],
  [6, 60, 2, 0.09444674, 0.18889349, 0.96264131, -0.34042828],
  [6, 30, 1, 0.20657208, 0.41314417, 0.36952738, -0.19581571],
  [6, 30, 2, 0.26449377, 0.52898755, 0.11597653, -0.17395162],
  [4, 30, 2, 0.14716804, 0.29433607, 0.66129304, -0.24996518],
  [6, 120, 2, 0.02956907, 0.05913815, 1.45810386, -0.57638016],
  [6, 240, 2, 0.00838065, 0.0167613, 1.72485092, -0.75837352],
  [6, 100, 1, 0.02785977, 0.05571953, 1.47548044, -0.58691951],
] as const;

/** Size of the recursion's answer to a sine, from its transfer function on the unit circle. */
function gainAt({ a0, a1, a2, b1, b2 }: Coefficients, hz: number, sampleHz: number): number {
  const angle = (2 * Math.PI * hz) / sampleHz;
  const size = (c0: number, c1: number, c2: number) =>
    Math.hypot(c0 + c1 * Math.cos(angle) + c2 * Math.cos(2 * angle), c1 * Math.sin(angle) + c2 * Math.sin(2 * angle));
  return size(a0, a1, a2) / size(1, -b1, -b2);
}

describe('the second-order Butterworth recursion', () => {
  it.each(table)('cut-off %d Hz at %d Hz, %d passes', (cutOffHz, sampleHz, passes, a0, a1, b1, b2) => {
    const found = butterworthCoefficients({ cutOffHz, sampleHz, passes });
    expect(found.a0).toBeCloseTo(a0, 7);
    expect(found.a1).toBeCloseTo(a1, 7);
    expect(found.a2).toBe(found.a0);
    expect(found.b1).toBeCloseTo(b1, 7);
    expect(found.b2).toBeCloseTo(b2, 7);
    expect(found.a0 + found.a1 + found.a2 + found.b1 + found.b2).toBeCloseTo(1, 12);
    expect(gainAt(found, cutOffHz, sampleHz) ** passes).toBeCloseTo(Math.SQRT1_2, 9);
  });

  it('is corrected by (2^(1/p) − 1)^(1/4) for p passes', () => {
    expect(passCorrection(1)).toBe(1);
    expect(passCorrection(2)).toBeCloseTo(0.80224326, 8);
  });

  it('would let only half through at the cut-off after two passes without the correction', () => {
    const uncorrected = butterworthCoefficients({ cutOffHz: 6, sampleHz: 60, passes: 1 });
    expect(gainAt(uncorrected, 6, 60) ** 2).toBeCloseTo(0.5, 9);
  });

  it('answers a step as computed by hand from zero', () => {
    const ones = Array.from({ length: 8 }, () => 1);
    const answer = singlePass(ones, butterworthCoefficients({ cutOffHz: 6, sampleHz: 60, passes: 1 }), 0);
    const expected = [0.067455, 0.279466, 0.5614, 0.796126, 0.948031, 1.02476, 1.049753, 1.046646];
    for (const [i, value] of expected.entries()) expect(answer[i]).toBeCloseTo(value, 6);
  });
});

describe('forward and back', () => {
  const sampleHz = 240;
  const cutOffHz = 6;
  const seconds = 10;

  /** Amplitude at one frequency, read off the middle of a long sine: least squares with its sine and cosine. */
  function measuredGain(hz: number): number {
    const times = Array.from({ length: seconds * sampleHz }, (_, i) => i / sampleHz);
    const smooth = lowPass(
      times.map((time) => Math.sin(2 * Math.PI * hz * time)),
      { sampleHz, cutOffHz },
    );
    const middle = times.map((time, i) => ({ time, value: smooth[i] ?? 0 })).slice(2 * sampleHz, 8 * sampleHz);
    const along = (wave: (angle: number) => number) =>
      (2 / middle.length) * middle.reduce((sum, { time, value }) => sum + value * wave(2 * Math.PI * hz * time), 0);
    return Math.hypot(along(Math.sin), along(Math.cos));
  }

  it('lets 1/√2 through at the cut-off', () => {
    expect(measuredGain(cutOffHz)).toBeCloseTo(Math.SQRT1_2, 6);
  });

  // 1 / (1 + (√2 − 1) (f / cut-off)⁴) of the analogue filter, computed; a sampled one differs by its frequency warp.
  it.each([
    [0.5, 0.9748],
    [2, 0.1311],
  ])('lets about as much through at %d × the cut-off as the analogue filter', (ratio, expected) => {
    const warp = (hz: number) => Math.tan((Math.PI * hz) / sampleHz);
    expect(1 / (1 + (Math.SQRT2 - 1) * ratio ** 4)).toBeCloseTo(expected, 4);
    expect(measuredGain(ratio * cutOffHz)).toBeCloseTo(
      1 / (1 + (Math.SQRT2 - 1) * (warp(ratio * cutOffHz) / warp(cutOffHz)) ** 4),
      6,
    );
    expect(Math.abs(measuredGain(ratio * cutOffHz) - expected)).toBeLessThan(0.005);
  });
});
