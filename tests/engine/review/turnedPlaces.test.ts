import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { turnedSize } from '../../../engine/framing/picturePlaces.ts';
import { setUpSchema } from '../../../engine/recording/setUp.ts';
import { type Drawn, drawnSchema } from '../../../engine/review/drawings/drawing.ts';
import { turnedCover, turnedDrawn, turnedSetUp } from '../../../engine/review/turnedPlaces.ts';

const size = { width: 1280, height: 720 };
const quarter = { size, by: 90 } as const;

describe('what was drawn on a picture that is turned a quarter to the right', () => {
  it('lies where the picture took it', () => {
    const line: Drawn = {
      shape: 'line',
      points: [
        { x: 0, y: 0 },
        { x: 1280, y: 720 },
      ],
    };
    expect(turnedDrawn(line, quarter)).toEqual({
      shape: 'line',
      points: [
        { x: 720, y: 0 },
        { x: 0, y: 1280 },
      ],
    });
  });

  it('stays a line where it was a plumb, and a plumb where the picture is upside down', () => {
    const plumb: Drawn = {
      shape: 'plumb',
      points: [
        { x: 300, y: 100 },
        { x: 300, y: 500 },
      ],
    };
    expect(turnedDrawn(plumb, quarter)).toEqual({
      shape: 'line',
      points: [
        { x: 620, y: 300 },
        { x: 220, y: 300 },
      ],
    });
    expect(turnedDrawn(plumb, { size, by: 180 }).shape).toBe('plumb');
  });

  it('keeps the words of a text', () => {
    const text: Drawn = { shape: 'text', points: [{ x: 10, y: 20 }], text: 'here' };
    expect(turnedDrawn(text, quarter)).toEqual({ shape: 'text', points: [{ x: 700, y: 10 }], text: 'here' });
  });
});

it('covers the same part of the scene once the picture is turned', () => {
  const box = { leftPx: 100, topPx: 50, widthPx: 80, heightPx: 90 };
  const cover = { kind: 'box', firstFrame: 2, lastFrame: 9, look: 'filled', places: [{ frame: 3, box }] } as const;
  expect(turnedCover({ ...cover, places: [...cover.places] }, quarter)).toMatchObject({
    firstFrame: 2,
    places: [{ frame: 3, box: { leftPx: 580, topPx: 100, widthPx: 90, heightPx: 80 } }],
  });
});

describe('what was stated for measuring', () => {
  const setUp = v.parse(setUpSchema, {
    facing: 'left',
    plumb: { top: { xPx: 100, yPx: 300 }, bottom: { xPx: 700, yPx: 320 } },
    clicks: [
      {
        frame: 4,
        what: 'disc',
        at: { xPx: 10, yPx: 20 },
        radiusPx: 8,
        box: { leftPx: 0, topPx: 10, rightPx: 20, bottomPx: 30 },
      },
    ],
  });

  it('goes along, and the upper end of an upright is the upper one again', () => {
    const after = turnedSetUp(setUp, quarter);
    expect(after.plumb).toEqual({ top: { xPx: 420, yPx: 100 }, bottom: { xPx: 400, yPx: 700 } });
    expect(after.clicks).toEqual([
      {
        frame: 4,
        what: 'disc',
        at: { xPx: 700, yPx: 10 },
        radiusPx: 8,
        box: { leftPx: 690, topPx: 0, rightPx: 710, bottomPx: 20 },
      },
    ]);
  });

  it('faces the other way upside down, and neither after a quarter', () => {
    expect(turnedSetUp(setUp, { size, by: 180 }).facing).toBe('right');
    expect(turnedSetUp(setUp, quarter).facing).toBe(null);
  });
});

it('comes back after four quarter turns, whatever was drawn', () => {
  const coordinate = fc.integer({ min: -2000, max: 20_000 }).map((tenths) => tenths / 10);
  const place = fc.record({ x: coordinate, y: coordinate });
  const drawn = fc.oneof(
    fc.tuple(place, place, place).map((points): Drawn => ({ shape: 'angle', points })),
    fc.array(place, { minLength: 2, maxLength: 6 }).map((points): Drawn => ({ shape: 'stroke', points })),
    fc.tuple(place, place).map((points): Drawn => ({ shape: 'circle', points })),
  );
  fc.assert(
    fc.property(drawn, (one) => {
      let [now, of]: [Drawn, typeof size] = [one, size];
      for (let turn = 0; turn < 4; turn += 1) {
        now = turnedDrawn(now, { size: of, by: 90 });
        of = turnedSize(of, 90);
      }
      expect(v.parse(drawnSchema, now)).toEqual(one);
    }),
  );
});
