import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type TurnDeg, turnedBy, turns } from '../../../engine/framing/framing.ts';
import {
  seenEdges,
  seenPart,
  seenPoint,
  seenSize,
  turnedEdges,
  turnedPoint,
  turnedSize,
  uprightPoint,
} from '../../../engine/framing/picturePlaces.ts';

const size = { width: 40, height: 20 };
const corner = { topLeft: { x: 0, y: 0 }, topRight: { x: 40, y: 0 }, bottomLeft: { x: 0, y: 20 } };

describe('a picture of 40 × 20 turned clockwise', () => {
  // By hand: a page turned a quarter to the right has its lower left corner at the upper left.
  it.each([
    [0, corner.topLeft, corner.topRight],
    [90, { x: 20, y: 0 }, { x: 20, y: 40 }],
    [180, { x: 40, y: 20 }, { x: 0, y: 20 }],
    [270, { x: 0, y: 40 }, { x: 0, y: 0 }],
  ] as const)('by %i° takes its upper corners along', (by, topLeft, topRight) => {
    expect(turnedPoint(corner.topLeft, size, by)).toEqual(topLeft);
    expect(turnedPoint(corner.topRight, size, by)).toEqual(topRight);
  });

  it('has its sides exchanged by a quarter turn alone', () => {
    expect(turns.map((by) => turnedSize(size, by))).toEqual([
      { width: 40, height: 20 },
      { width: 20, height: 40 },
      { width: 40, height: 20 },
      { width: 20, height: 40 },
    ]);
  });

  it('keeps a rectangle a rectangle', () => {
    expect(turnedEdges({ left: 2, top: 3, right: 12, bottom: 8 }, size, 90)).toEqual({
      left: 12,
      top: 2,
      right: 17,
      bottom: 12,
    });
  });
});

const turn = fc.constantFrom<TurnDeg>(...turns);
const side = fc.integer({ min: 16, max: 4000 });
const anySize = fc.record({ width: side, height: side });
const point = fc.record({ x: fc.integer({ min: -500, max: 5000 }), y: fc.integer({ min: -500, max: 5000 }) });

it('two turns are one turn of their sum', () => {
  fc.assert(
    fc.property(anySize, point, turn, turn, (of, at, one, other) => {
      const twice = turnedPoint(turnedPoint(at, of, one), turnedSize(of, one), other);
      expect(twice).toEqual(turnedPoint(at, of, turnedBy(one, other)));
    }),
  );
});

const crop = fc.option(
  fc.record({
    leftPx: fc.integer({ min: 0, max: 5000 }),
    topPx: fc.integer({ min: 0, max: 5000 }),
    widthPx: fc.integer({ min: 16, max: 5000 }),
    heightPx: fc.integer({ min: 16, max: 5000 }),
  }),
);

describe('what is seen of any picture', () => {
  it('lies within it, on even edges or its own, and holds the whole crop that lies in it', () => {
    fc.assert(
      fc.property(anySize, crop, fc.boolean(), (of, cut, mirrored) => {
        const part = seenPart(of, { crop: cut, mirrored });
        expect(part.left).toBeGreaterThanOrEqual(0);
        expect(part.top).toBeGreaterThanOrEqual(0);
        expect(part.right).toBeLessThanOrEqual(of.width);
        expect(part.bottom).toBeLessThanOrEqual(of.height);
        expect(part.left % 2).toBe(0);
        expect(part.right === of.width || part.right % 2 === 0).toBe(true);
        if (cut === null || cut.leftPx + cut.widthPx > of.width || cut.topPx + cut.heightPx > of.height) return;
        expect(part.left).toBeLessThanOrEqual(cut.leftPx);
        expect(part.right).toBeGreaterThanOrEqual(cut.leftPx + cut.widthPx);
        expect(seenSize(part).height).toBeLessThanOrEqual(cut.heightPx + 2);
      }),
    );
  });

  it('gives each of its points back, and takes the middle of a mirrored picture to the middle', () => {
    fc.assert(
      fc.property(anySize, crop, fc.boolean(), point, (of, cut, mirrored, at) => {
        const part = seenPart(of, { crop: cut, mirrored });
        expect(uprightPoint(part, seenPoint(part, at))).toEqual(at);
        const middle = { x: (part.left + part.right) / 2, y: (part.top + part.bottom) / 2 };
        const { width, height } = seenSize(part);
        expect(seenPoint(part, middle)).toEqual({ x: width / 2, y: height / 2 });
      }),
    );
  });

  it('swaps left and right of a mirrored rectangle', () => {
    const part = seenPart({ width: 100, height: 50 }, { crop: null, mirrored: true });
    expect(seenEdges(part, { left: 10, top: 5, right: 30, bottom: 9 })).toEqual({
      left: 70,
      top: 5,
      right: 90,
      bottom: 9,
    });
  });
});
