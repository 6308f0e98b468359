import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameAtSeconds } from '../../../../engine/motion/measurement.ts';
import {
  fit,
  gappedPath,
  panBy,
  pictureAt,
  pictureScale,
  type Zoom,
  zoomAt,
} from '../../../../renderer/review/model/pictureGeometry.ts';

const stage = { width: 800, height: 600 };
const seenAt = (zoom: Zoom, p: { x: number; y: number }) => ({
  x: p.x * zoom.scale + zoom.x,
  y: p.y * zoom.scale + zoom.y,
});

describe('zooming', () => {
  it('twice in the middle shows the middle quarter: (200, 150) comes to the corner', () => {
    const zoom = zoomAt(fit, { x: 400, y: 300 }, 2, stage);
    expect(zoom).toEqual({ scale: 2, x: -400, y: -300 });
    expect(seenAt(zoom, { x: 200, y: 150 })).toEqual({ x: 0, y: 0 });
  });

  it('keeps what is under the pointer under it, and never shows beyond the picture', () => {
    const at = fc.record({
      x: fc.double({ min: 0, max: 800, noNaN: true }),
      y: fc.double({ min: 0, max: 600, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(at, fc.double({ min: 0.4, max: 3, noNaN: true })), { maxLength: 12 }),
        at,
        (moves, point) => {
          const zoom = moves.reduce((now, [p, factor]) => zoomAt(now, p, factor, stage), fit);
          expect(zoom.scale).toBeGreaterThanOrEqual(1);
          expect(seenAt(zoom, { x: 0, y: 0 }).x).toBeLessThanOrEqual(1e-9);
          expect(seenAt(zoom, { x: 800, y: 600 }).x).toBeGreaterThanOrEqual(800 - 1e-6);
          const under = { x: (point.x - zoom.x) / zoom.scale, y: (point.y - zoom.y) / zoom.scale };
          const closer = zoomAt(zoom, point, 1.5, stage);
          expect(seenAt(closer, under).x).toBeCloseTo(point.x, 6);
          expect(seenAt(closer, under).y).toBeCloseTo(point.y, 6);
        },
      ),
    );
  });

  it('pans no further than the edge', () => {
    const zoom = zoomAt(fit, { x: 0, y: 0 }, 2, stage);
    expect(panBy(zoom, { x: 50, y: -5000 }, stage)).toEqual({ scale: 2, x: 0, y: -600 });
    expect(panBy(fit, { x: 9, y: 9 }, stage)).toEqual(fit);
  });
});

/** A wide picture in a taller box: bars above and below of (300 - 400 × 9/16) / 2 = 37.5 pixels. */
const wide = { width: 1600, height: 900 };
const box = { left: 100, top: 50, width: 400, height: 300 };

describe('the point of the picture under a point of the screen', () => {
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

const at = (xPx: number, yPx: number) => ({ xPx, yPx });

it('draws through the points it has, and leaves out what was not seen', () => {
  const points = [at(0, 0), at(1, 2), null, null, at(5, 5.128), at(6, 6)];
  expect(gappedPath(points, 0, 5)).toBe('M0,0L1,2M5,5.13L6,6');
});

it('draws a point alone between gaps as a dot', () => {
  expect(gappedPath([null, at(3, 4), null], 0, 2)).toBe('M3,4Z');
  expect(gappedPath([null, at(3, 4)], 0, 1)).toBe('M3,4Z');
});

it('keeps to the stretch that was asked for, and inside the list', () => {
  const points = [at(0, 0), at(1, 1), at(2, 2), at(3, 3)];
  expect(gappedPath(points, 1, 2)).toBe('M1,1L2,2');
  expect(gappedPath(points, -5, 1)).toBe('M0,0L1,1');
  expect(gappedPath(points, 3, 99)).toBe('M3,3Z');
  expect(gappedPath(points, 2, 1)).toBe('');
});

it.each([
  [-1, 0],
  [0, 0],
  [0.05, 0],
  [0.1, 1],
  [0.33, 2],
  [0.5, 3],
  [9, 3],
])('finds the frame on screen at %s s', (seconds, place) => {
  expect(frameAtSeconds([0, 0.1, 0.3, 0.5], seconds)).toBe(place);
});
