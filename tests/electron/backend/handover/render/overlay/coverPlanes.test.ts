import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coverPlanes } from '../../../../../../electron/backend/handover/render/overlay/coverPlanes.ts';

describe('what lies under a cover', () => {
  const size = { width: 64, height: 48 };
  const boxes = fc.record({
    leftPx: fc.integer({ min: -40, max: 80 }),
    topPx: fc.integer({ min: -40, max: 80 }),
    widthPx: fc.integer({ min: 1, max: 60 }),
    heightPx: fc.integer({ min: 1, max: 60 }),
  });
  const noisy = () => Uint8Array.from({ length: 64 * 48 * 1.5 }, (_, place) => (place * 7919) % 251);

  it('is one shade when filled, and the rest of the picture is as it was', () => {
    fc.assert(
      fc.property(boxes, (at) => {
        const picture = noisy();
        coverPlanes(picture, size, at, 'filled');
        const before = noisy();
        const shades = new Set<number>();
        for (let row = 0; row < size.height; row += 1) {
          for (let column = 0; column < size.width; column += 1) {
            const place = row * size.width + column;
            const isIn =
              column >= at.leftPx && column < at.leftPx + at.widthPx && row >= at.topPx && row < at.topPx + at.heightPx;
            if (isIn) shades.add(picture[place] ?? 0);
            const isFar =
              column < at.leftPx - 2 ||
              column > at.leftPx + at.widthPx + 1 ||
              row < at.topPx - 2 ||
              row > at.topPx + at.heightPx + 1;
            if (isFar) expect(picture[place]).toBe(before[place]);
          }
        }
        expect(shades.size).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('has at most four by four shades as a mosaic', () => {
    const picture = noisy();
    coverPlanes(picture, size, { leftPx: 8, topPx: 4, widthPx: 40, heightPx: 40 }, 'mosaic');
    const shades = new Set<number>();
    for (let row = 4; row < 44; row += 1)
      for (let column = 8; column < 48; column += 1) shades.add(picture[row * 64 + column] ?? 0);
    expect(shades.size).toBeLessThanOrEqual(16);
  });
});
