import { describe, expect, it } from 'vitest';
import { blurM, frameTimeSdS, frameTimeWorstS, rateToTimeWithin } from '../../engine/motion/geometry/exposure.ts';
import {
  offAxisDeg,
  outOfPlaneShare,
  outOfPlaneShiftM,
  rollDriftM,
  sidewaysShare,
} from '../../engine/motion/geometry/plane.ts';
import { depthUncertaintyM, metresPerPixel, scaleErrorPerPixel } from '../../engine/motion/geometry/scale.ts';

// Projection formulas of a pinhole camera; all values computed apart from the product.

describe('the scale of a full-size disc', () => {
  // 450 mm: the largest competition disc (IWF technical rules, sport equipment, as restated elsewhere).
  it.each([
    [100, 4.5, 1],
    [150, 3, 0.67],
    [200, 2.25, 0.5],
    [300, 1.5, 0.33],
  ])('of %d pixels', (lengthPx, millimetres, percent) => {
    expect(1000 * metresPerPixel({ lengthM: 0.45, lengthPx })).toBeCloseTo(millimetres, 9);
    expect(100 * scaleErrorPerPixel(lengthPx)).toBeCloseTo(percent, 2);
  });

  it.each([
    [1080, 432, 194],
    [1920, 768, 346],
  ])('in a field of 2.5 m across %d pixels', (acrossPx, pxPerM, discPx) => {
    const scale = metresPerPixel({ lengthM: 2.5, lengthPx: acrossPx });
    expect(1 / scale).toBeCloseTo(pxPerM, 9);
    expect(Math.round(0.45 / scale)).toBe(discPx);
  });
});

describe('a length out of the calibrated plane', () => {
  it.each([
    [2, -4.8, -20, 2.6],
    [3, -3.2, -14.3, 1.7],
    [4, -2.4, -11.1, 1.3],
    [5, -2, -9.1, 1],
  ])('seen from %d m, 0.10 m behind, 0.50 m behind, 0.05 m nearer', (cameraDistanceM, tenth, half, nearer) => {
    const percent = (behindM: number) => 100 * (outOfPlaneShare({ cameraDistanceM, behindM }) - 1);
    expect(percent(0.1)).toBeCloseTo(tenth, 1);
    expect(percent(0.5)).toBeCloseTo(half, 1);
    expect(percent(-0.05)).toBeCloseTo(nearer, 1);
  });
});

describe('a camera that is not square or level', () => {
  it.each([
    [5, -0.4],
    [10, -1.5],
    [15, -3.4],
    [20, -6],
    [30, -13.4],
  ])('turned by %d degrees, sideways lengths', (yawDeg, percent) => {
    expect(100 * (sidewaysShare(yawDeg) - 1)).toBeCloseTo(percent, 1);
  });

  it.each([
    [0.98, 11.5],
    [0.95, 18.2],
    [0.9, 25.8],
    [1, 0],
  ])('read from a disc of %d', (axisRatio, degrees) => {
    expect(offAxisDeg(axisRatio)).toBeCloseTo(degrees, 1);
  });

  it('rolled by 2 degrees makes 21 mm of drift out of 0.6 m', () => {
    expect(1000 * rollDriftM({ heightChangeM: 0.6, rollDeg: 2 })).toBeCloseTo(21, 0);
  });

  it.each([
    // Lean of a guided rail: from memory; the arithmetic is checked.
    [5, 52.5],
    [7, 73.7],
    [10, 105.8],
  ])('a rail that leans by %d degrees moves sideways over 0.6 m as much', (rollDeg, millimetres) => {
    expect(1000 * rollDriftM({ heightChangeM: 0.6, rollDeg })).toBeCloseTo(millimetres, 1);
  });
});

describe('a knee 0.15 m nearer than the hip crease', () => {
  it.each([
    // Lens above the knee in metres, distance in metres, seeming shift upwards in millimetres.
    [1, 3, -52.6],
    [1, 5, -30.9],
    [0.5, 3, -26.3],
    [-0.45, 3, 23.7],
  ])('with the lens %d m above it and %d m away', (lensAboveM, cameraDistanceM, millimetres) => {
    const shift = outOfPlaneShiftM({ cameraDistanceM, behindM: -0.15, aboveAxisM: -lensAboveM });
    expect(1000 * shift).toBeCloseTo(millimetres, 1);
  });

  it('is not shifted in the calibrated plane, whatever the height of the lens', () => {
    expect(outOfPlaneShiftM({ cameraDistanceM: 3, behindM: 0, aboveAxisM: -2 })).toBe(0);
  });

  // Chosen for the product, no source: two pixels, the shift and 20 mm, as a root of squares: √(6² + 26.3² + 20²) mm.
  it('leaves a depth uncertain', () => {
    expect(1000 * depthUncertaintyM({ metresPerPixel: 0.003, shiftM: 0.0263 })).toBeCloseTo(33.58, 1);
    expect(1000 * depthUncertaintyM({ metresPerPixel: 0, shiftM: 0 })).toBeCloseTo(20, 9);
  });
});

describe('the time between two events, each known to one frame', () => {
  it.each([
    [24, 41.7, 17, 8.3],
    [25, 40, 16.3, 8],
    [30, 33.3, 13.6, 6.7],
    [50, 20, 8.2, 4],
    [60, 16.7, 6.8, 3.3],
    [120, 8.3, 3.4, 1.7],
    [240, 4.2, 1.7, 0.8],
  ])('at %d frames a second', (framesPerSecond, worstMs, sdMs, percentOfHalfSecond) => {
    expect(1000 * frameTimeWorstS(framesPerSecond)).toBeCloseTo(worstMs, 1);
    expect(1000 * frameTimeSdS(framesPerSecond)).toBeCloseTo(sdMs, 1);
    expect((100 * frameTimeWorstS(framesPerSecond)) / 0.5).toBeCloseTo(percentOfHalfSecond, 1);
  });

  it.each([
    [0, 10],
    [1, 30],
    [2, 50],
  ])('needs, to a tenth with ends %d frames off, this rate', (framesOff, framesPerSecond) => {
    expect(rateToTimeWithin({ withinS: 0.1, framesOff })).toBeCloseTo(framesPerSecond, 9);
  });

  it('makes 0.6875 m/s read 0.635 to 0.750 when both ends are one frame off at 30 a second', () => {
    const offS = 2 * frameTimeWorstS(30);
    expect(0.55 / (0.8 + offS)).toBeCloseTo(0.635, 3);
    expect(0.55 / (0.8 - offS)).toBeCloseTo(0.75, 3);
  });
});

describe('the smear of a moving load', () => {
  it.each([
    [0.5, [16.7, 8.3, 4.2, 2, 1]],
    [1, [33.3, 16.7, 8.3, 4, 2]],
    [2, [66.7, 33.3, 16.7, 8, 4]],
  ])('at %d m/s, exposed for 1/30 to 1/500 s', (speedMps, millimetres) => {
    for (const [i, denominator] of [30, 60, 120, 250, 500].entries()) {
      const smear = blurM({ speedMps, exposureS: 1 / denominator });
      expect(1000 * smear).toBeCloseTo(millimetres[i] ?? Number.NaN, 1);
    }
  });

  it('is 6.7 or 1.6 pixels long at 400 pixels a metre', () => {
    expect(400 * blurM({ speedMps: 1, exposureS: 1 / 60 })).toBeCloseTo(6.7, 1);
    expect(400 * blurM({ speedMps: 1, exposureS: 1 / 250 })).toBeCloseTo(1.6, 1);
  });
});
