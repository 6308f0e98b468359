import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nearnessOf, zoomFor } from '../../../../renderer/review/model/nearness.ts';
import { fit, zoomAt } from '../../../../renderer/review/model/pictureGeometry.ts';

const picture = { width: 1280, height: 720 };

it('tells a zoom by the picture: what lies in the middle of the stage, and how near', () => {
  // The stage is as large as the picture, and shows its right lower quarter.
  expect(nearnessOf({ scale: 2, x: -1280, y: -720 }, picture, picture)).toEqual({ scale: 2, x: 960, y: 540 });
  expect(nearnessOf(fit, picture, picture)).toBeNull();
});

it('gives the same zoom back on the same stage, and the same middle on any other', () => {
  const side = fc.integer({ min: 200, max: 2_000 });
  fc.assert(
    fc.property(side, side, side, side, fc.double({ min: 1.1, max: 10, noNaN: true }), (w, h, x, y, factor) => {
      const stage = { width: w, height: h };
      const zoom = zoomAt(fit, { x: x % w, y: y % h }, factor, stage);
      const near = nearnessOf(zoom, stage, picture);
      const again = zoomFor(near, stage, picture);
      expect(again.scale).toBe(zoom.scale);
      // Places are kept to a tenth of the picture's pixel.
      const within = (0.1 * zoom.scale * Math.max(w, h)) / 720 + 1e-6;
      expect(Math.abs(again.x - zoom.x)).toBeLessThan(within);
      expect(Math.abs(again.y - zoom.y)).toBeLessThan(within);
    }),
  );
});
