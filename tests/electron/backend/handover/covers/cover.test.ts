import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coverPlanes } from '../../../../../electron/backend/handover/covers/coverPlanes.ts';
import { boxAt, type Cover, headCover } from '../../../../../electron/backend/handover/index.ts';
import { type Body, jointNames, type Sighting } from '../../../../../engine/motion/index.ts';

const box = (leftPx: number) => ({ leftPx, topPx: 10, widthPx: 40, heightPx: 50 });

describe('where a cover is', () => {
  const moving: Cover = {
    ...{ fromFrame: 10, toFrame: 50, look: 'filled' },
    places: [
      { frame: 20, box: box(0) },
      { frame: 30, box: box(100) },
    ],
  };

  it.each([
    [9, null],
    [10, 0],
    [20, 0],
    [23, 30],
    [30, 100],
    [50, 100],
    [51, null],
  ])('at frame %d', (frame, leftPx) => {
    expect(boxAt(moving, frame)?.leftPx ?? null).toBe(leftPx);
  });
});

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

describe('a cover that follows the head', () => {
  /** A body whose head is at a place; shoulders and hips 100 pixels apart. */
  const bodyWith = (head: { readonly x: number; readonly y: number } | null): Body =>
    jointNames.map((name): Sighting => {
      if (/Shoulder/.test(name)) return { xPx: 300, yPx: 200, confidence: 0.9 };
      if (/Hip/.test(name)) return { xPx: 300, yPx: 300, confidence: 0.9 };
      if (!/nose|Eye|Ear/.test(name)) return { xPx: 0, yPx: 0, confidence: 0.1 };
      return { xPx: head?.x ?? 0, yPx: head?.y ?? 0, confidence: head ? 0.8 : 0.1 };
    });
  const joints = (heads: readonly ({ readonly x: number; readonly y: number } | null)[]) => ({
    ...{ method: 'made up', everyFrames: 1 },
    frames: heads.map(bodyWith),
  });

  it('has the head in its middle, wide enough for it, and moves on where it is hidden', () => {
    const cover = headCover(joints([{ x: 300, y: 150 }, null, { x: 320, y: 170 }]), {
      ...{ fromFrame: 0, toFrame: 2, look: 'filled' },
    });
    if (cover === null) throw new Error('no cover');
    const middles = [0, 1, 2].map((frame) => {
      const at = boxAt(cover, frame);
      return at && [at.leftPx + at.widthPx / 2, at.topPx + at.heightPx / 2];
    });
    expect(middles).toEqual([
      [300, 150],
      [310, 160],
      [320, 170],
    ]);
    // A head is some 45 pixels high beside a trunk of 100.
    expect(cover.places[0]?.box.widthPx).toBeGreaterThan(60);
  });

  it('is not there when no head is seen', () => {
    expect(headCover(joints([null, null]), { fromFrame: 0, toFrame: 1, look: 'filled' })).toBeNull();
  });
});
