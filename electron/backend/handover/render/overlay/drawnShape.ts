import type { Drawn, Point } from '../../../../../engine/review/drawings/drawing.ts';
import { angleDeg, distancePx } from '../../../../../engine/review/drawings/geometry.ts';
import { casedWords, ink, strokeCased, traceGapped } from './ink.ts';
import type { Pen } from './painter.ts';

/** Draws one of the coach's shapes, its points in pixels of the picture that is made. */
export function drawShape(pen: Pen, drawn: Drawn, unit: number): void {
  const look = { widthPx: 2 * unit, colour: ink.chalk };
  switch (drawn.shape) {
    case 'line':
    case 'plumb':
    case 'stroke':
      strokeCased(pen, look, () => traceGapped(pen, drawn.points));
      return;
    case 'angle':
      strokeCased(pen, look, () => traceGapped(pen, drawn.points));
      drawAngle(pen, drawn.points, unit);
      return;
    case 'circle': {
      const [middle, rim] = drawn.points;
      strokeCased(pen, look, () => pen.arc(middle.x, middle.y, distancePx(middle, rim), 0, 2 * Math.PI));
      return;
    }
    case 'text':
      casedWords(pen, drawn.text, { at: drawn.points[0], sizePx: 17 * unit, align: 'left' });
  }
}

const towards = (from: Point, to: Point, length: number): Point => {
  const whole = distancePx(from, to) || 1;
  return { x: from.x + ((to.x - from.x) * length) / whole, y: from.y + ((to.y - from.y) * length) / whole };
};

/** The arc between the arms, and the degrees beside the apex, away from the arms. */
function drawAngle(pen: Pen, [one, apex, other]: readonly [Point, Point, Point], unit: number): void {
  const degrees = angleDeg(one, apex, other);
  if (degrees === null) return;
  const radius = Math.min(26 * unit, distancePx(apex, one) / 2, distancePx(apex, other) / 2);
  const [from, to] = [one, other].map((end) => Math.atan2(end.y - apex.y, end.x - apex.x));
  const anticlockwise = (one.x - apex.x) * (other.y - apex.y) - (one.y - apex.y) * (other.x - apex.x) < 0;
  strokeCased(pen, { widthPx: 2 * unit, colour: ink.chalk }, () =>
    pen.arc(apex.x, apex.y, radius, from ?? 0, to ?? 0, anticlockwise),
  );
  const [a, b] = [towards(apex, one, radius), towards(apex, other, radius)];
  const between = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const away = distancePx(apex, between) < radius / 100 ? { x: apex.x, y: apex.y + 1 } : between;
  const at = towards(apex, away, -30 * unit);
  casedWords(pen, `${Math.round(degrees)}°`, { at, sizePx: 17 * unit, align: 'center' });
}

/** The shape with each of its points placed elsewhere, as in a picture of another size. */
export function placedShape(drawn: Drawn, place: (point: Point) => Point): Drawn {
  switch (drawn.shape) {
    case 'line':
    case 'plumb':
    case 'circle': {
      const [a, b] = drawn.points;
      return { ...drawn, points: [place(a), place(b)] };
    }
    case 'angle': {
      const [a, b, c] = drawn.points;
      return { ...drawn, points: [place(a), place(b), place(c)] };
    }
    case 'stroke':
      return { ...drawn, points: drawn.points.map(place) };
    case 'text':
      return { ...drawn, points: [place(drawn.points[0])] };
  }
}
