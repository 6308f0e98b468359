import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { colourCrop, resample } from '../../../../../electron/backend/measure/joints/resample.ts';

function planeOf(width: number, height: number, value: (x: number, y: number) => number) {
  return {
    width,
    height,
    data: Uint8Array.from({ length: width * height }, (_, i) => value(i % width, Math.floor(i / width))),
  };
}
const side = 16;

describe('resampling a square of a picture', () => {
  test('one to one, it is the picture itself', () => {
    const plane = planeOf(40, 30, (x, y) => (7 * x + 13 * y) % 256);
    const out = resample(plane, { leftPx: 5, topPx: 3, sidePx: side }, side, 0);
    expect([...out]).toEqual(
      Array.from({ length: side * side }, (_, i) => (7 * (5 + (i % side)) + 13 * (3 + Math.floor(i / side))) % 256),
    );
  });

  test('an even plane stays even at any size and place inside', () => {
    const plane = planeOf(90, 90, () => 77);
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 70, noNaN: true }),
        fc.double({ min: 6, max: 12, noNaN: true }),
        (sidePx, leftPx) => {
          for (const value of resample(plane, { leftPx, topPx: leftPx, sidePx }, side, 0))
            expect(value).toBeCloseTo(77, 2);
        },
      ),
    );
  });

  test('a slope keeps its height at every place to a twentieth of a pixel, made smaller or larger', () => {
    const plane = planeOf(100, 100, (x) => 2 * x);
    for (const sidePx of [11, 32, 61.5]) {
      const out = resample(plane, { leftPx: 15.25, topPx: 20, sidePx }, side, 0);
      for (let x = 0; x < side; x += 1) {
        const height = 2 * (15.25 + ((x + 0.5) * sidePx) / side - 0.5);
        expect(Math.abs((out[5 * side + x] ?? 0) - height)).toBeLessThan(0.1);
      }
    }
  });

  test('a checkerboard made eight times smaller is grey, not a pattern', () => {
    const plane = planeOf(200, 200, (x, y) => ((x + y) % 2 === 0 ? 255 : 0));
    const out = resample(plane, { leftPx: 30, topPx: 30, sidePx: 8 * side }, side, 0);
    for (const value of out) expect(Math.abs(value - 127.5)).toBeLessThan(3);
  });

  test('beyond the edges is what was asked for', () => {
    const plane = planeOf(20, 20, () => 200);
    const out = resample(plane, { leftPx: -20, topPx: 0, sidePx: 40 }, side, 9);
    expect(out[3 * side + 2]).toBe(9);
    expect(out[3 * side + 12]).toBeCloseTo(200, 2);
    expect([...resample(plane, { leftPx: 500, topPx: 500, sidePx: 40 }, side, 9)].every((value) => value === 9)).toBe(
      true,
    );
  });
});

describe('colours', () => {
  // 8-bit limited-range codes of 100 % colour bars under ITU-R BT.709 (Y, Cb, Cr).
  test.each([
    ['white', [235, 128, 128], [255, 255, 255]],
    ['black', [16, 128, 128], [0, 0, 0]],
    ['red', [63, 102, 240], [255, 0, 0]],
    ['green', [173, 42, 26], [0, 255, 0]],
    ['blue', [32, 240, 118], [0, 0, 255]],
    ['yellow', [219, 16, 138], [255, 255, 0]],
  ] as const)('%s', (_, [y, blue, red], rgb) => {
    const bytes = new Uint8Array(9 * 7 + 2 * 5 * 4);
    bytes.fill(y, 0, 63).fill(blue, 63, 83).fill(red, 83);
    const out = colourCrop(bytes, { width: 9, height: 7 }, { leftPx: 2, topPx: 2, sidePx: 3 }, 4);
    for (let i = 0; i < out.length; i += 1)
      expect(Math.abs((out[i] ?? -9) - (rgb[i % 3] ?? 0))).toBeLessThanOrEqual(2.5);
  });
});
