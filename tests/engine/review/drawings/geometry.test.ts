import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawn } from '../../../../engine/review/drawings/drawing.ts';
import { angleDeg, distanceToDrawnPx, moveDrawn, movePoint } from '../../../../engine/review/drawings/geometry.ts';

/** A joint of the published angle conventions, x forwards and y up, put into a picture of 1000 pixels a metre. */
const inPicture = ([x, y]: readonly [number, number]) => ({ x: x * 1000, y: 1000 - y * 1000 });
const joints = { hip: inPicture([0, 0.5]), knee: inPicture([0.42, 0.5]), ankle: inPicture([0.3, 0.09]) };
const shoulder = inPicture([0.25, 0.95]);

describe('the angle of three points', () => {
  // Interior angles as in goniometry (apex on the joint's axis); values by the law of cosines, worked by hand.
  it('is the interior angle of the joint', () => {
    expect(angleDeg(joints.hip, joints.knee, joints.ankle)).toBeCloseTo(73.686, 3);
    expect(angleDeg(shoulder, joints.hip, joints.knee)).toBeCloseTo(60.945, 3);
  });

  it('is the same from either arm, and between 0 and 180', () => {
    const whole = fc.record({ x: fc.integer({ min: -5000, max: 5000 }), y: fc.integer({ min: -5000, max: 5000 }) });
    fc.assert(
      fc.property(whole, whole, whole, (one, apex, other) => {
        const angle = angleDeg(one, apex, other);
        expect(angleDeg(other, apex, one)).toBe(angle);
        if (angle === null) return;
        expect(angle).toBeGreaterThanOrEqual(0);
        expect(angle).toBeLessThanOrEqual(180);
      }),
    );
  });

  it('is 180 for a straight limb, and none where an arm has no length', () => {
    expect(angleDeg({ x: 0, y: 0 }, { x: 0, y: 5 }, { x: 0, y: 9 })).toBe(180);
    expect(angleDeg({ x: 1, y: 1 }, { x: 1, y: 1 }, { x: 4, y: 1 })).toBeNull();
  });
});

const line: Drawn = {
  shape: 'line',
  points: [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
  ],
};
const circle: Drawn = {
  shape: 'circle',
  points: [
    { x: 0, y: 0 },
    { x: 3, y: 4 },
  ],
};

describe('how far a point is from what is drawn', () => {
  it.each([
    [{ x: 5, y: 2 }, line, 2],
    [{ x: 13, y: 4 }, line, 5],
    [{ x: 0, y: 9 }, circle, 4],
    [{ x: 0, y: 0 }, circle, 5],
    [{ x: 6, y: 8 }, { shape: 'text', points: [{ x: 0, y: 0 }], text: 'Here' }, 10],
  ] as const)('%o from %o: %f', (point, drawn, distance) => {
    expect(distanceToDrawnPx(point, drawn as Drawn)).toBeCloseTo(distance, 12);
  });
});

describe('moving', () => {
  it('moves every point alike, and back again', () => {
    const there = moveDrawn(line, { x: 3, y: -2 });
    expect(there.points).toEqual([
      { x: 3, y: -2 },
      { x: 13, y: -2 },
    ]);
    expect(moveDrawn(there, { x: -3, y: 2 })).toEqual(line);
  });

  it('keeps a plumb vertical, and the size of a circle whose middle moves', () => {
    const plumb: Drawn = {
      shape: 'plumb',
      points: [
        { x: 5, y: 0 },
        { x: 5, y: 90 },
      ],
    };
    expect(movePoint(plumb, 1, { x: 8, y: 70 }).points).toEqual([
      { x: 8, y: 0 },
      { x: 8, y: 70 },
    ]);
    expect(movePoint(circle, 0, { x: 1, y: 1 }).points).toEqual([
      { x: 1, y: 1 },
      { x: 4, y: 5 },
    ]);
  });
});
