import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { depthUncertaintyM } from '../../engine/motion/joints/depth.ts';
import { offAxisDeg, scaleOf } from '../../engine/motion/set/calibrate.ts';
import { setUpSchema } from '../../engine/recording/setUp.ts';

// Projection formulas of a pinhole camera; all values computed apart from the product.

const setUp = v.parse(setUpSchema, {});

/** The scale of a full-size disc that stands `heightPx` high and `axisRatio` times as wide. */
function scaleOfDisc({ heightPx, axisRatio = 1 }: { readonly heightPx: number; readonly axisRatio?: number }) {
  const outline = { radiusPx: heightPx / 2, radiusPlusMinusPx: 0, axisRatio, majorAxisDeg: 90 };
  const scale = scaleOf({ setUp, outline, leanDeg: null });
  if (scale === null) throw new Error('no scale');
  return scale;
}

describe('the scale of a full-size disc', () => {
  // 450 mm: the largest competition disc (IWF technical rules, sport equipment, as restated elsewhere).
  it.each([
    [100, 4.5],
    [150, 3],
    [200, 2.25],
    [300, 1.5],
  ])('of %d pixels', (heightPx, millimetres) => {
    expect(1000 * scaleOfDisc({ heightPx }).calibration.metresPerPixel).toBeCloseTo(millimetres, 9);
  });

  it.each([
    [1080, 432, 194],
    [1920, 768, 346],
  ])('in a field of 2.5 m across %d pixels', (acrossPx, pxPerM, discPx) => {
    const knownLength = { from: { xPx: 0, yPx: 0 }, to: { xPx: acrossPx, yPx: 0 }, lengthM: 2.5 };
    const scale = scaleOf({ setUp: { ...setUp, knownLength }, outline: null, leanDeg: null });
    const metresPerPixel = scale?.calibration.metresPerPixel ?? Number.NaN;
    expect(1 / metresPerPixel).toBeCloseTo(pxPerM, 9);
    expect(Math.round(0.45 / metresPerPixel)).toBe(discPx);
  });
});

describe('a camera that is not square', () => {
  it.each([
    [5, -0.4],
    [10, -1.5],
    [15, -3.4],
    [20, -6],
    [30, -13.4],
  ])('turned by %d degrees, sideways lengths', (yawDeg, percent) => {
    const scale = scaleOfDisc({ heightPx: 200, axisRatio: Math.cos((yawDeg * Math.PI) / 180) });
    expect(100 * (scale.metresPerPixelUp / scale.metresPerPixelAcross - 1)).toBeCloseTo(percent, 1);
    expect(scale.calibration.offAxisDeg).toBeCloseTo(yawDeg, 9);
  });

  it.each([
    [0.98, 11.5],
    [0.95, 18.2],
    [0.9, 25.8],
    [1, 0],
    // An outline that measures rounder than a circle.
    [1.0001, 0],
    [0, 90],
  ])('read from a disc of %d', (axisRatio, degrees) => {
    expect(offAxisDeg(axisRatio)).toBeCloseTo(degrees, 1);
  });
});

// Chosen for the product, no source: two pixels, the shift and 20 mm, as a root of squares: √(6² + 26.3² + 20²) mm.
it('a depth is uncertain by its landmarks, its scale and the shift between two planes', () => {
  expect(1000 * depthUncertaintyM({ metresPerPixel: 0.003, shiftM: 0.0263 })).toBeCloseTo(33.58, 1);
  expect(1000 * depthUncertaintyM({ metresPerPixel: 0, shiftM: 0 })).toBeCloseTo(20, 9);
});
