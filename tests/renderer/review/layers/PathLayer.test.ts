import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type CameraMoves, steadied } from '../../../../engine/motion/camera/cameraPath.ts';
import { overFrame } from '../../../../renderer/review/layers/PathLayer.tsx';

const camera = (frame: CameraMoves['frames'][number]): CameraMoves => ({
  moves: true,
  removable: true,
  frames: [frame],
});

/** What SVG's matrix(a b c d e f) does to a point (SVG 2, 8.5). */
function drawn(transform: string, { xPx, yPx }: { readonly xPx: number; readonly yPx: number }) {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = (/\((.*)\)/.exec(transform)?.[1] ?? '').split(' ').map(Number);
  return { xPx: a * xPx + c * yPx + e, yPx: b * xPx + d * yPx + f };
}

it('takes out a quarter turn, a doubled scale and a shift', () => {
  // (10, 0), turned a quarter from x towards y, is (0, 10); doubled (0, 20); shifted (3, 24).
  const { xPx, yPx } = steadied(camera({ shiftXPx: 3, shiftYPx: 4, turnDeg: 90, scale: 2 }), 0, {
    xPx: 10,
    yPx: 0,
  });
  expect(xPx).toBeCloseTo(3, 9);
  expect(yPx).toBeCloseTo(24, 9);
});

it('draws a place of a frame where it was in that frame', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      fc.record({
        shiftXPx: number(-200, 200),
        shiftYPx: number(-200, 200),
        turnDeg: number(-30, 30),
        scale: number(0.5, 2),
      }),
      fc.record({ xPx: number(0, 2000), yPx: number(0, 2000) }),
      (frame, place) => {
        const back = drawn(overFrame(camera(frame), 0), steadied(camera(frame), 0, place));
        expect(back.xPx).toBeCloseTo(place.xPx, 6);
        expect(back.yPx).toBeCloseTo(place.yPx, 6);
      },
    ),
  );
});

it('leaves places alone where the camera stands, or its movement can’t be taken out', () => {
  const frame = { shiftXPx: 3, shiftYPx: 4, turnDeg: 5, scale: 2 };
  const place = { xPx: 7, yPx: 8 };
  expect(steadied(null, 0, place)).toEqual(place);
  expect(steadied({ moves: true, removable: false, frames: [frame] }, 0, place)).toEqual(place);
  expect(steadied(camera(frame), 3, place)).toEqual(place);
});
