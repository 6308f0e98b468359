import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bendDeg, leanDeg } from '../../../../engine/motion/joints/angles.ts';

/** A place in metres, y up, as pixels with y down. */
const at = (x: number, y: number) => ({ xPx: 1000 * x, yPx: -1000 * y });

describe('angles of body segments', () => {
  // Vectors worked out by hand from plane trigonometry.
  test('knee: hip (0, .50), knee (.42, .50), ankle (.30, .09) is bent by 106.314 degrees', () => {
    expect(bendDeg(at(0, 0.5), at(0.42, 0.5), at(0.3, 0.09))).toBeCloseTo(106.314, 3);
  });

  test('trunk: hip (0, .50), shoulder (.25, .95) leans by 29.055 degrees', () => {
    expect(leanDeg(at(0, 0.5), at(0.25, 0.95), 'right')).toBeCloseTo(29.055, 3);
    expect(leanDeg(at(0, 0.5), at(0.25, 0.95), 'left')).toBeCloseTo(-29.055, 3);
  });

  test('hip: shoulder (.25, .95), hip (0, .50), knee (.42, .50) has an inner angle of 60.945 degrees', () => {
    expect(180 - bendDeg(at(0.25, 0.95), at(0, 0.5), at(0.42, 0.5))).toBeCloseTo(60.945, 3);
  });

  test('squat with the thigh level and the shank leaning by 25 degrees: the knee is bent by 115', () => {
    const knee = at(0.43 * Math.sin((25 * Math.PI) / 180), 0.43 * Math.cos((25 * Math.PI) / 180));
    const hip = { xPx: knee.xPx - 430, yPx: knee.yPx };
    expect(bendDeg(hip, knee, at(0, 0))).toBeCloseTo(115, 6);
  });

  const place = fc.record({ xPx: fc.integer({ min: -900, max: 900 }), yPx: fc.integer({ min: -900, max: 900 }) });
  test('a bend is the same from either end, mirrored, and at any size', () => {
    fc.assert(
      fc.property(place, place, place, fc.integer({ min: 1, max: 9 }), (one, middle, other, size) => {
        const bend = bendDeg(one, middle, other);
        const changed = [other, middle, one].map(({ xPx, yPx }) => ({ xPx: -size * xPx, yPx: size * yPx }));
        const [a = one, b = middle, c = other] = changed;
        expect(bendDeg(a, b, c)).toBeCloseTo(bend, 6);
      }),
    );
  });
});
