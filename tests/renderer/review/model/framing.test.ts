import fc from 'fast-check';
import { expect, it } from 'vitest';
import { leastSidePx } from '../../../../engine/framing/framing.ts';
import { pictureAt, pictureScale } from '../../../../renderer/review/model/pictureGeometry.ts';
import { cropThrough, middleCrop, movedCrop, sizedCrop } from '../../../../renderer/review/model/shownFraming.ts';

const side = fc.integer({ min: leastSidePx, max: 4000 });
const size = fc.record({ width: side, height: side });
const point = fc.record({ x: fc.integer({ min: -500, max: 5000 }), y: fc.integer({ min: -500, max: 5000 }) });

it('finds the point of a picture under the pointer, in a mirror too, at any zoom and place', () => {
  const box = fc.record({
    left: fc.integer({ min: -3000, max: 3000 }),
    top: fc.integer({ min: -3000, max: 3000 }),
    zoom: fc.double({ min: 0.2, max: 16, noNaN: true }),
  });
  fc.assert(
    fc.property(size, point, box, fc.boolean(), (picture, at, { left, top, zoom }, mirrored) => {
      const [width, height] = [picture.width * zoom, picture.height * zoom];
      const lying = { left, top, width, height };
      expect(pictureScale(lying, picture)).toBeCloseTo(zoom, 6);
      const across = mirrored ? picture.width - at.x : at.x;
      const screen = { x: left + across * zoom, y: top + at.y * zoom };
      const found = pictureAt(screen, lying, { ...picture, mirrored });
      expect(Math.abs(found.x - at.x)).toBeLessThanOrEqual(0.051);
      expect(Math.abs(found.y - at.y)).toBeLessThanOrEqual(0.051);
    }),
  );
});

it('draws, moves and sizes a part that always lies in the picture and can be seen', () => {
  fc.assert(
    fc.property(size, point, point, point, (picture, one, other, by) => {
      const drawn = cropThrough(one, other, picture);
      for (const crop of [drawn, movedCrop(drawn, by, picture), sizedCrop(drawn, by, picture), middleCrop(picture)]) {
        expect(crop.leftPx).toBeGreaterThanOrEqual(0);
        expect(crop.topPx).toBeGreaterThanOrEqual(0);
        expect(crop.leftPx + crop.widthPx).toBeLessThanOrEqual(picture.width);
        expect(crop.topPx + crop.heightPx).toBeLessThanOrEqual(picture.height);
        expect(Math.min(crop.widthPx, crop.heightPx)).toBeGreaterThanOrEqual(leastSidePx);
      }
    }),
  );
});

it('keeps what was drawn inside the picture where the pointer left it', () => {
  expect(cropThrough({ x: 300, y: 100 }, { x: 700, y: 500 }, { width: 854, height: 480 })).toEqual({
    leftPx: 300,
    topPx: 100,
    widthPx: 400,
    heightPx: 380,
  });
});
