import type { Drawn, Point } from './drawing.ts';

/** The distance of two points, in pixels. */
export const distancePx = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

/**
 * The inner angle at `apex` between its two arms, 0-180 degrees; null where an arm has no length. It is the interior
 * angle of goniometry: 180 is a straight limb.
 */
export function angleDeg(one: Point, apex: Point, other: Point): number | null {
  const a = { x: one.x - apex.x, y: one.y - apex.y };
  const b = { x: other.x - apex.x, y: other.y - apex.y };
  if (Math.hypot(a.x, a.y) === 0 || Math.hypot(b.x, b.y) === 0) return null;
  const cross = a.x * b.y - a.y * b.x;
  const dot = a.x * b.x + a.y * b.y;
  return (Math.abs(Math.atan2(cross, dot)) * 180) / Math.PI;
}

/** The distance of a point from the stretch between two others, in pixels. */
export function distanceToStretchPx(point: Point, from: Point, to: Point): number {
  const along = { x: to.x - from.x, y: to.y - from.y };
  const squared = along.x ** 2 + along.y ** 2;
  if (squared === 0) return distancePx(point, from);
  const share = ((point.x - from.x) * along.x + (point.y - from.y) * along.y) / squared;
  const held = Math.min(1, Math.max(0, share));
  return distancePx(point, { x: from.x + held * along.x, y: from.y + held * along.y });
}

const distanceToPathPx = (point: Point, path: readonly Point[]): number =>
  path.reduce((least, to, place) => {
    const from = path[place - 1];
    return from === undefined ? least : Math.min(least, distanceToStretchPx(point, from, to));
  }, Number.POSITIVE_INFINITY);

/** How far a point is from what is drawn, in pixels: from its lines; for words, from the point where they begin. */
export function distanceToDrawnPx(point: Point, drawn: Drawn): number {
  switch (drawn.shape) {
    case 'line':
    case 'angle':
    case 'plumb':
    case 'stroke':
      return distanceToPathPx(point, drawn.points);
    case 'circle': {
      const [middle, rim] = drawn.points;
      return Math.abs(distancePx(point, middle) - distancePx(middle, rim));
    }
    case 'text':
      return distancePx(point, drawn.points[0]);
  }
}

const shifted = (point: Point, by: Point): Point => ({ x: point.x + by.x, y: point.y + by.y });

/** The whole shape, moved. */
export function moveDrawn(drawn: Drawn, by: Point): Drawn {
  switch (drawn.shape) {
    case 'line':
    case 'plumb':
    case 'circle': {
      const [a, b] = drawn.points;
      return { ...drawn, points: [shifted(a, by), shifted(b, by)] };
    }
    case 'angle': {
      const [a, b, c] = drawn.points;
      return { ...drawn, points: [shifted(a, by), shifted(b, by), shifted(c, by)] };
    }
    case 'stroke':
      return { ...drawn, points: drawn.points.map((point) => shifted(point, by)) };
    case 'text':
      return { ...drawn, points: [shifted(drawn.points[0], by)] };
  }
}

/** The shape with one point put elsewhere; a plumb stays vertical, a circle keeps its size when its middle moves. */
export function movePoint(drawn: Drawn, pointIndex: number, at: Point): Drawn {
  const put = (point: Point, index: number): Point => (index === pointIndex ? at : point);
  switch (drawn.shape) {
    case 'line': {
      const [a, b] = drawn.points;
      return { ...drawn, points: [put(a, 0), put(b, 1)] };
    }
    case 'plumb': {
      const [a, b] = drawn.points;
      return {
        ...drawn,
        points: [
          { ...put(a, 0), x: at.x },
          { ...put(b, 1), x: at.x },
        ],
      };
    }
    case 'circle': {
      const [middle, rim] = drawn.points;
      if (pointIndex === 0) return moveDrawn(drawn, { x: at.x - middle.x, y: at.y - middle.y });
      return { ...drawn, points: [middle, put(rim, 1)] };
    }
    case 'angle': {
      const [a, b, c] = drawn.points;
      return { ...drawn, points: [put(a, 0), put(b, 1), put(c, 2)] };
    }
    case 'stroke':
      return { ...drawn, points: drawn.points.map(put) };
    case 'text':
      return { ...drawn, points: [put(drawn.points[0], 0)] };
  }
}
