import type { Drawn, Point } from './drawing.ts';

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
export function placePoint(drawn: Drawn, place: number, at: Point): Drawn {
  const put = (point: Point, index: number): Point => (index === place ? at : point);
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
      if (place === 0) return moveDrawn(drawn, { x: at.x - middle.x, y: at.y - middle.y });
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
