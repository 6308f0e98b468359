import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  offAxisDeg,
  outOfPlaneShare,
  outOfPlaneShiftM,
  rollDriftM,
  sidewaysShare,
} from '../../../../engine/motion/geometry/plane.ts';
import { depthUncertaintyM } from '../../../../engine/motion/geometry/scale.ts';

const height = fc.double({ min: -2, max: 2, noNaN: true });
const planes = fc.record({
  cameraDistanceM: fc.double({ min: 1, max: 10, noNaN: true }),
  behindM: fc.double({ min: -0.9, max: 2, noNaN: true }),
});

describe('a turned camera', () => {
  it('is told by the disc it shows: a circle looks as wide as its cosine', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 89, noNaN: true }), (yawDeg) => {
        expect(offAxisDeg(sidewaysShare(yawDeg))).toBeCloseTo(yawDeg, 4);
      }),
    );
  });

  it('takes an outline that measures rounder than a circle for square on', () => {
    expect(offAxisDeg(1.0001)).toBe(0);
    expect(offAxisDeg(0)).toBeCloseTo(90, 10);
  });
});

describe('a plane nearer or further', () => {
  // A pinhole one unit behind the lens: what lies at height y and distance z stands at y / z.
  it('looks as a pinhole sees it', () => {
    fc.assert(
      fc.property(planes, height, height, ({ cameraDistanceM, behindM }, low, high) => {
        const seenM = (heightM: number) => (heightM / (cameraDistanceM + behindM)) * cameraDistanceM;
        const shift = (aboveAxisM: number) => outOfPlaneShiftM({ cameraDistanceM, behindM, aboveAxisM });
        expect(shift(high)).toBeCloseTo(seenM(high) - high, 9);
        expect(high + shift(high) - (low + shift(low))).toBeCloseTo(
          (high - low) * outOfPlaneShare({ cameraDistanceM, behindM }),
          9,
        );
      }),
    );
  });

  it('draws what is further towards the lens axis, and pushes what is nearer away from it', () => {
    const shift = (behindM: number, aboveAxisM: number) =>
      Math.sign(outOfPlaneShiftM({ cameraDistanceM: 4, behindM, aboveAxisM }));
    expect([shift(0.5, 1), shift(0.5, -1), shift(-0.5, 1), shift(-0.5, -1)]).toEqual([-1, 1, 1, -1]);
  });
});

it('a roll makes drift of height, to the same side as long as it goes up', () => {
  expect(rollDriftM({ heightChangeM: 1, rollDeg: 45 })).toBeCloseTo(1, 12);
  expect(rollDriftM({ heightChangeM: -1, rollDeg: 45 })).toBeCloseTo(-1, 12);
  expect(rollDriftM({ heightChangeM: 1, rollDeg: 0 })).toBe(0);
});

it('a depth is never surer than its landmarks, and less sure the coarser and the further apart', () => {
  const parts = fc.record({
    metresPerPixel: fc.double({ min: 0, max: 0.02, noNaN: true }),
    shiftM: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
  });
  fc.assert(
    fc.property(parts, (from) => {
      const found = depthUncertaintyM(from);
      const least = Math.max(0.02, 2 * from.metresPerPixel, Math.abs(from.shiftM));
      expect(found).toBeGreaterThanOrEqual(least * (1 - 1e-12));
      expect(found).toBeLessThanOrEqual(0.02 + 2 * from.metresPerPixel + Math.abs(from.shiftM) + 1e-12);
      expect(depthUncertaintyM({ ...from, shiftM: -from.shiftM })).toBe(found);
    }),
  );
});
