import type { Drawn, Point } from '../../../engine/review/drawings/drawing.ts';
import { angleDeg, distancePx } from '../../../engine/review/drawings/geometry.ts';
import { degreesWords } from './shapes.ts';

type DrawnShapeProps = {
  readonly drawn: Drawn;
  /** Picture pixels that one pixel of the screen covers. */
  readonly unit: number;
};

const path = (points: readonly Point[]): string =>
  points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`).join('');

/** A light stroke over a dark one, so that it shows on any footage. */
function Stroked({ d, unit }: { readonly d: string; readonly unit: number }) {
  return (
    <>
      <path className="drawn-halo" d={d} strokeWidth={5 * unit} />
      <path className="drawn-chalk" d={d} strokeWidth={2 * unit} />
    </>
  );
}

function Words({ at, words, unit, anchor }: WordsProps) {
  return (
    <text
      className="drawn-words"
      x={at.x}
      y={at.y}
      fontSize={17 * unit}
      strokeWidth={4 * unit}
      textAnchor={anchor}
      dominantBaseline="central"
    >
      {words}
    </text>
  );
}

type WordsProps = {
  readonly at: Point;
  readonly words: string;
  readonly unit: number;
  readonly anchor: 'start' | 'middle';
};

const towards = (from: Point, to: Point, length: number): Point => {
  const whole = distancePx(from, to) || 1;
  return { x: from.x + ((to.x - from.x) * length) / whole, y: from.y + ((to.y - from.y) * length) / whole };
};

/** The arc between the arms, and the degrees beside the apex, away from the arms. */
function AngleFigure({ drawn, unit }: DrawnShapeProps) {
  if (drawn.shape !== 'angle') return null;
  const [one, apex, other] = drawn.points;
  const degrees = angleDeg(one, apex, other);
  if (degrees === null) return null;
  const radius = Math.min(26 * unit, distancePx(apex, one) / 2, distancePx(apex, other) / 2);
  const from = towards(apex, one, radius);
  const to = towards(apex, other, radius);
  const clockwise = (from.x - apex.x) * (to.y - apex.y) - (from.y - apex.y) * (to.x - apex.x) > 0 ? 1 : 0;
  const between = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const away = distancePx(apex, between) < radius / 100 ? { x: apex.x, y: apex.y + 1 } : between;
  const label = towards(apex, away, -30 * unit);
  return (
    <>
      <Stroked d={`M${from.x} ${from.y}A${radius} ${radius} 0 0 ${clockwise} ${to.x} ${to.y}`} unit={unit} />
      <Words at={label} words={degreesWords(drawn)} unit={unit} anchor="middle" />
    </>
  );
}

/** One shape in the picture's own pixels; strokes and words keep their size on screen at any zoom. */
export function DrawnShape({ drawn, unit }: DrawnShapeProps) {
  switch (drawn.shape) {
    case 'line':
    case 'plumb':
    case 'stroke':
      return <Stroked d={path(drawn.points)} unit={unit} />;
    case 'angle':
      return (
        <>
          <Stroked d={path(drawn.points)} unit={unit} />
          <AngleFigure drawn={drawn} unit={unit} />
        </>
      );
    case 'circle': {
      const [{ x, y }, rim] = drawn.points;
      const r = distancePx({ x, y }, rim);
      return <Stroked d={`M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`} unit={unit} />;
    }
    case 'text':
      return <Words at={drawn.points[0]} words={drawn.text} unit={unit} anchor="start" />;
  }
}
