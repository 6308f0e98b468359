import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, meetsPicture } from '../../../../engine/covers/cover.ts';
import {
  boxHolds,
  boxThrough,
  draggedCorner,
  leastSidePx,
  middleBox,
  movedBox,
  sizedBox,
} from '../../../../renderer/review/covers/coverBoxes.ts';

const picture = { width: 854, height: 480 };
const box: Box = { leftPx: 100, topPx: 50, widthPx: 60, heightPx: 80 };
const points = fc.record({ x: fc.integer({ min: -3000, max: 3000 }), y: fc.integer({ min: -3000, max: 3000 }) });
const boxes: fc.Arbitrary<Box> = fc.record({
  leftPx: fc.integer({ min: 0, max: 800 }),
  topPx: fc.integer({ min: 0, max: 400 }),
  widthPx: fc.integer({ min: leastSidePx, max: 400 }),
  heightPx: fc.integer({ min: leastSidePx, max: 400 }),
});

describe('a box that is drawn', () => {
  it('lies between its corners, whichever was first', () => {
    const wanted = { leftPx: 10, topPx: 20, widthPx: 30, heightPx: 40 };
    expect(boxThrough({ x: 10.2, y: 20.4 }, { x: 40, y: 60 }, picture)).toEqual(wanted);
    expect(boxThrough({ x: 40, y: 20 }, { x: 10, y: 60 }, picture)).toEqual(wanted);
  });

  it('stays within the picture, in whole pixels, wherever the pointer goes', () => {
    fc.assert(
      fc.property(points, points, (from, to) => {
        const { leftPx, topPx, widthPx, heightPx } = boxThrough(from, to, picture);
        expect(leftPx >= 0 && topPx >= 0 && widthPx >= 1 && heightPx >= 1).toBe(true);
        expect([leftPx, topPx, widthPx, heightPx].every(Number.isInteger)).toBe(true);
        expect(leftPx <= picture.width && topPx <= picture.height).toBe(true);
      }),
    );
  });
});

describe('a box that is moved or sized', () => {
  it('goes as far as it is moved, and is as large as before', () => {
    expect(movedBox(box, { x: 5, y: -7 }, picture)).toEqual({ ...box, leftPx: 105, topPx: 43 });
  });

  it('can’t be moved off the picture', () => {
    fc.assert(
      fc.property(boxes, points, (one, by) => {
        const moved = movedBox(one, by, picture);
        expect([moved.widthPx, moved.heightPx]).toEqual([one.widthPx, one.heightPx]);
        expect(meetsPicture(moved, picture)).toBe(true);
      }),
    );
  });

  it('grows about its middle, and stops where it could no longer be seen or would be larger than the picture', () => {
    expect(sizedBox(box, { x: 10, y: 0 }, picture)).toEqual({ ...box, leftPx: 95, widthPx: 70 });
    expect(sizedBox(box, { x: 0, y: -20 }, picture)).toEqual({ ...box, topPx: 60, heightPx: 60 });
    expect(sizedBox(box, { x: -1000, y: 1000 }, picture)).toMatchObject({ widthPx: leastSidePx, heightPx: 480 });
  });

  it('is dragged by its lower right corner, and never inside out', () => {
    expect(draggedCorner(box, { x: 200, y: 140 })).toEqual({ ...box, widthPx: 100, heightPx: 90 });
    expect(draggedCorner(box, { x: 0, y: 0 })).toEqual({ ...box, widthPx: leastSidePx, heightPx: leastSidePx });
  });
});

it('begins in the middle of the picture where a key places it', () => {
  expect(middleBox(picture)).toEqual({ leftPx: 387, topPx: 200, widthPx: 80, heightPx: 80 });
});

it('holds what lies within it and on its rim', () => {
  const places = [
    [100, 50],
    [160, 130],
    [130, 90],
    [99, 90],
    [130, 131],
  ];
  expect(places.map(([x = 0, y = 0]) => boxHolds(box, { x, y }))).toEqual([true, true, true, false, false]);
});
