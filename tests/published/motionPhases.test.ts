import { describe, expect, it } from 'vitest';
import { smoothCurve } from '../../engine/motion/reps/curve.ts';
import { type RaisedCosine, raisedCosine } from '../engine/motion/signal/raisedCosine.ts';

/** Speeds as the product takes them, smoothed so little that the movement stays as it is. */
function speedsOf(movement: RaisedCosine): number[] {
  const heights = raisedCosine(movement);
  const stepS = 1 / movement.sampleHz;
  const timesS = heights.map((_, i) => i * stepS);
  return smoothCurve(timesS, heights, { stepS, cutOffHz: 100, longestGapS: 1 }).speeds.map(
    (speed) => speed ?? Number.NaN,
  );
}

/** Seconds during which the speed of a movement is at or over a threshold, read between samples. */
function timeOverS(movement: RaisedCosine, thresholdMps: number): number {
  const step = 1 / movement.sampleHz;
  const speeds = speedsOf(movement);
  const crossings = speeds.flatMap((speed, i) => {
    const next = speeds[i + 1];
    if (next === undefined || speed >= thresholdMps === next >= thresholdMps) return [];
    return [(i + (thresholdMps - speed) / (next - speed)) * step];
  });
  expect(crossings).toHaveLength(2);
  return (crossings[1] ?? Number.NaN) - (crossings[0] ?? Number.NaN);
}

// Raised cosine y = range / 2 × (1 − cos(π t / T)): mean range / T, peak π / 2 of it; a threshold takes T / π × asin(threshold /
// peak) off either end. Closed formula; the table computed apart from the product.
describe('a raised-cosine phase', () => {
  it('of 0.60 m in 0.80 s has a mean of 0.750 and a peak of 1.1781 m/s', () => {
    const movement = { romM: 0.6, durationS: 0.8, restS: 0.5, sampleHz: 1000 };
    const heights = raisedCosine(movement);
    const speeds = speedsOf(movement);
    expect(Math.max(...speeds)).toBeCloseTo(1.1781, 3);
    expect(((heights[1300] ?? 0) - (heights[500] ?? 0)) / 0.8).toBeCloseTo(0.75, 9);
  });

  it.each([
    [0.6, 0.8, 0.03, 0.0065, 0.787],
    [0.6, 3, 0.03, 0.0913, 2.817],
    [0.6, 3, 0.05, 0.1526, 2.695],
  ])('of %d m in %d s loses its ends below %d m/s', (romM, durationS, thresholdMps, trimmedS, leftS) => {
    const left = timeOverS({ romM, durationS, restS: 0.5, sampleHz: 1000 }, thresholdMps);
    expect(left).toBeCloseTo(leftS, 3);
    expect((durationS - left) / 2).toBeCloseTo(trimmedS, 3);
  });
});
