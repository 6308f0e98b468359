import { describe, expect, it } from 'vitest';
import { pictureAt, pictureScale } from '../../../../renderer/review/model/pictureGeometry.ts';

/** A wide picture in a taller box: bars above and below of (300 - 400 × 9/16) / 2 = 37.5 pixels. */
const wide = { width: 1600, height: 900 };
const box = { left: 100, top: 50, width: 400, height: 300 };

describe('the place in the picture under a place on screen', () => {
  it.each([
    [
      { x: 100, y: 87.5 },
      { x: 0, y: 0 },
    ],
    [
      { x: 500, y: 312.5 },
      { x: 1600, y: 900 },
    ],
    [
      { x: 300, y: 200 },
      { x: 800, y: 450 },
    ],
    [
      { x: 101, y: 87.5 },
      { x: 4, y: 0 },
    ],
    [
      { x: 100, y: 50 },
      { x: 0, y: -150 },
    ],
  ])('%o is %o', (screen, place) => {
    expect(pictureAt(screen, box, wide)).toEqual(place);
  });

  it('takes bars at the sides of an upright picture into account', () => {
    const upright = { width: 900, height: 1600 };
    expect(pictureScale(box, upright)).toBe(300 / 1600);
    expect(pictureAt({ x: 300, y: 50 }, box, upright)).toEqual({ x: 450, y: 0 });
  });
});
