import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import {
  type Box,
  boxAt,
  type Cover,
  type CoverPlace,
  clipCoverSchema,
  meetsPicture,
  withoutPlace,
  withPlace,
} from '../../../engine/covers/cover.ts';

const box = (leftPx: number): Box => ({ leftPx, topPx: 10, widthPx: 40, heightPx: 50 });

const sides = ['leftPx', 'topPx', 'widthPx', 'heightPx'] as const;
const boxes: fc.Arbitrary<Box> = fc.record({
  leftPx: fc.integer({ min: -100, max: 1000 }),
  topPx: fc.integer({ min: -100, max: 1000 }),
  widthPx: fc.integer({ min: 1, max: 400 }),
  heightPx: fc.integer({ min: 1, max: 400 }),
});
const frames = fc.integer({ min: 0, max: 300 });
const places: fc.Arbitrary<CoverPlace[]> = fc
  .uniqueArray(fc.record({ frame: frames, box: boxes }), {
    selector: ({ frame }) => frame,
    minLength: 1,
    maxLength: 12,
  })
  .map((some) => some.sort((one, other) => one.frame - other.frame));
const covers: fc.Arbitrary<Cover> = fc
  .record({ one: frames, other: frames, places })
  .map(({ one, other, ...rest }) => ({
    ...{ firstFrame: Math.min(one, other), lastFrame: Math.max(one, other), look: 'filled', ...rest },
  }));

describe('where a cover is', () => {
  const moving: Cover = {
    ...{ firstFrame: 10, lastFrame: 50, look: 'filled' },
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

  it('is nowhere outside of its frames, and somewhere within them', () => {
    fc.assert(
      fc.property(covers, frames, (cover, frame) => {
        expect(boxAt(cover, frame) !== null).toBe(frame >= cover.firstFrame && frame <= cover.lastFrame);
      }),
    );
  });

  it('is where it was put, before the first place as there, after the last as there', () => {
    fc.assert(
      fc.property(places, (some) => {
        const cover: Cover = { firstFrame: 0, lastFrame: 400, look: 'mosaic', places: some };
        for (const { frame, box: at } of some) expect(boxAt(cover, frame)).toEqual(at);
        expect(boxAt(cover, 0)).toEqual(some[0]?.box);
        expect(boxAt(cover, 400)).toEqual(some.at(-1)?.box);
      }),
    );
  });

  it('moves evenly between two places: every step from frame to frame is the same', () => {
    fc.assert(
      fc.property(boxes, boxes, fc.integer({ min: 2, max: 60 }), (from, to, lasts) => {
        const cover: Cover = {
          ...{ firstFrame: 0, lastFrame: lasts, look: 'filled' },
          places: [
            { frame: 0, box: from },
            { frame: lasts, box: to },
          ],
        };
        for (let frame = 0; frame < lasts; frame += 1) {
          for (const side of sides) {
            const step = (boxAt(cover, frame + 1)?.[side] ?? 0) - (boxAt(cover, frame)?.[side] ?? 0);
            expect(step).toBeCloseTo((to[side] - from[side]) / lasts, 6);
          }
        }
      }),
    );
  });

  it('is in no frame changed by a place put where it is already', () => {
    fc.assert(
      fc.property(covers, frames, frames, (cover, frame, seen) => {
        const here = boxAt({ ...cover, firstFrame: 0, lastFrame: 400 }, frame);
        if (here === null) return;
        const again = boxAt({ ...cover, places: withPlace(cover.places, { frame, box: here }) }, seen);
        const before = boxAt(cover, seen);
        for (const side of sides) expect(again?.[side] ?? 0).toBeCloseTo(before?.[side] ?? 0, 6);
      }),
    );
  });
});

describe('the places of a cover', () => {
  it('rise, hold one for each frame, and lose none but the one asked for', () => {
    fc.assert(
      fc.property(places, frames, boxes, (some, frame, at) => {
        const more = withPlace(some, { frame, box: at });
        expect(v.is(clipCoverSchema, { kind: 'box', firstFrame: 0, lastFrame: 9, places: more })).toBe(true);
        expect(more.find((place) => place.frame === frame)?.box).toEqual(at);
        expect(withoutPlace(more, frame)).toEqual(some.filter((place) => place.frame !== frame));
      }),
    );
  });

  it('are refused out of order, twice at a frame, and where there are none', () => {
    const cover = (...at: readonly number[]) => ({
      ...{ kind: 'box', firstFrame: 0, lastFrame: 9 },
      places: at.map((frame) => ({ frame, box: box(1) })),
    });
    expect([cover(1, 2), cover(2, 1), cover(1, 1), cover()].map((each) => v.is(clipCoverSchema, each))).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });
});

it.each([
  [{ leftPx: -39, topPx: 0, widthPx: 40, heightPx: 9 }, true],
  [{ leftPx: -40, topPx: 0, widthPx: 40, heightPx: 9 }, false],
  [{ leftPx: 99, topPx: 49, widthPx: 1, heightPx: 1 }, true],
  [{ leftPx: 100, topPx: 0, widthPx: 9, heightPx: 9 }, false],
  [{ leftPx: 0, topPx: 50, widthPx: 9, heightPx: 9 }, false],
])('tells whether a box lies in a picture of 100 by 50: %j', (at, meets) => {
  expect(meetsPicture(at, { width: 100, height: 50 })).toBe(meets);
});
