import type { Drawing, DrawingShape, Drawn, Point } from '../../../engine/review/drawings/drawing.ts';
import { angleDeg } from '../../../engine/review/drawings/geometry.ts';
import { sayDrawings } from '../../words/sayDrawings.ts';
import type { Size } from '../model/pictureGeometry.ts';
import type { DrawTool } from '../state/pictureTools.ts';

export const tools: readonly DrawTool[] = ['select', 'line', 'angle', 'plumb', 'circle', 'stroke', 'text'];

/** An angle in whole degrees; null for other shapes, and while an arm has no length. */
function degreesOf(drawn: Drawn): number | null {
  const degrees = drawn.shape === 'angle' ? angleDeg(...drawn.points) : null;
  return degrees === null ? null : Math.round(degrees);
}

/** An angle as it is written beside its arms, "87°"; '' where there is none. */
export function degreesWords(drawn: Drawn): string {
  const degrees = degreesOf(drawn);
  return degrees === null ? '' : `${degrees}°`;
}

/** What a drawing is, for the list and for people who can't see it: "Angle 87°, drawing 2". */
export function drawingWords(drawing: Drawing, index: number): string {
  const number = index + 1;
  const degrees = degreesOf(drawing);
  if (drawing.shape === 'text') return sayDrawings('namedText', { text: drawing.text, number });
  if (degrees !== null) return sayDrawings('namedAngle', { degrees, number });
  return sayDrawings('named', { shape: sayDrawings(drawing.shape), number });
}

/** The name of one of a shape's points. */
export function pointName(shape: DrawingShape, index: number): string {
  if (shape === 'angle') return sayDrawings(index === 0 ? 'firstArm' : index === 1 ? 'apex' : 'secondArm');
  if (shape === 'circle') return sayDrawings(index === 0 ? 'centre' : 'rim');
  return sayDrawings(index === 0 ? 'firstEnd' : 'secondEnd');
}

/** Shapes that are set by a number of points. */
export type PointedShape = Exclude<DrawingShape, 'stroke' | 'text'>;

export const pointsNeeded: Readonly<Record<PointedShape, number>> = { line: 2, angle: 3, plumb: 2, circle: 2 };

/** The shape through the points so far, with the missing ones on the last; null before the first point. */
export function shapeThrough(shape: PointedShape, points: readonly Point[]): Drawn | null {
  const [a] = points;
  if (a === undefined) return null;
  const b = points[1] ?? a;
  switch (shape) {
    case 'line':
    case 'circle':
      return { shape, points: [a, b] };
    case 'plumb':
      return { shape, points: [a, { x: a.x, y: b.y }] };
    case 'angle':
      return { shape, points: [a, b, points[2] ?? b] };
  }
}

/** A shape of usual size in the middle of the picture, to be moved by keys; a text needs its words first. */
export function usualShape(shape: Exclude<DrawingShape, 'text'>, { width, height }: Size): Drawn {
  const middle = { x: Math.round(width / 2), y: Math.round(height / 2) };
  const arm = Math.round(Math.min(width, height) / 6);
  const { x, y } = middle;
  switch (shape) {
    case 'line':
    case 'stroke':
      return {
        shape,
        points: [
          { x: x - arm, y },
          { x: x + arm, y },
        ],
      };
    case 'plumb':
      return {
        shape,
        points: [
          { x, y: y - 2 * arm },
          { x, y: y + 2 * arm },
        ],
      };
    case 'circle':
      return { shape, points: [middle, { x: x + arm, y }] };
    case 'angle':
      return { shape, points: [{ x, y: y - arm }, middle, { x: x + arm, y }] };
  }
}
