import fc from 'fast-check';
import { expect, it } from 'vitest';
import { asFilmed } from '../../../../engine/framing/framing.ts';
import { seenPart } from '../../../../engine/framing/picturePlaces.ts';
import { nearnessOf, zoomFor } from '../../../../renderer/review/model/nearness.ts';
import { fit, zoomAt } from '../../../../renderer/review/model/pictureGeometry.ts';

const picture = { width: 1280, height: 720 };
const whole = seenPart(picture, asFilmed);
/** The right half of it, as in a mirror. */
const half = seenPart(picture, { mirrored: true, crop: { leftPx: 640, topPx: 0, widthPx: 640, heightPx: 720 } });

it('tells a zoom by the picture: what lies in the middle of the stage, and how near', () => {
  // The stage is as large as the picture, and shows its right lower quarter.
  expect(nearnessOf({ scale: 2, x: -1280, y: -720 }, picture, whole)).toEqual({ scale: 2, x: 960, y: 540 });
  // In the mirrored half, the left upper quarter of the stage is the right upper one of the picture.
  const stage = { width: 640, height: 720 };
  expect(nearnessOf({ scale: 2, x: 0, y: 0 }, stage, half)).toEqual({ scale: 2, x: 1120, y: 180 });
  expect(nearnessOf(fit, picture, whole)).toBeNull();
});

it('gives the same zoom back on the same stage, and the same middle on any other', () => {
  const side = fc.integer({ min: 200, max: 2_000 });
  fc.assert(
    fc.property(side, side, side, side, fc.double({ min: 1.1, max: 10, noNaN: true }), (w, h, x, y, factor) => {
      for (const part of [whole, half]) {
        const stage = { width: w, height: h };
        const zoom = zoomAt(fit, { x: x % w, y: y % h }, factor, stage);
        const near = nearnessOf(zoom, stage, part);
        const again = zoomFor(near, stage, part);
        expect(again.scale).toBe(zoom.scale);
        // Places are kept to a tenth of the picture's pixel.
        const within = (0.1 * zoom.scale * Math.max(w, h)) / 640 + 1e-6;
        expect(Math.abs(again.x - zoom.x)).toBeLessThan(within);
        expect(Math.abs(again.y - zoom.y)).toBeLessThan(within);
      }
    }),
  );
});
