import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fit, panBy, type Zoom, zoomAt } from '../../../../renderer/review/model/pictureGeometry.ts';

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
