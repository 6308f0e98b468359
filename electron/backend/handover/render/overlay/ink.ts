import { directionOf } from '../../../../../engine/document/words.ts';
import type { Point } from '../../../../../engine/review/drawings/drawing.ts';
import { setFace } from './faces.ts';
import type { Pen } from './painter.ts';

/** The few colours of the overlay: light strokes, each over a dark one, so that they show on any footage. */
export const ink = {
  dark: '#171512',
  chalk: '#efe8da',
  /** The path of the load. */
  path: '#5cc8ff',
} as const;

export type Look = { readonly widthPx: number; readonly colour: string; readonly dash?: readonly number[] };

/** Strokes what `trace` traces: a light line in a dark casing. */
export function strokeCased(pen: Pen, { widthPx, colour, dash = [] }: Look, trace: (pen: Pen) => void): void {
  for (const casing of [true, false]) {
    pen.beginPath();
    trace(pen);
    pen.setLineDash([...dash]);
    pen.globalAlpha = casing ? 0.75 : 1;
    pen.strokeStyle = casing ? ink.dark : colour;
    pen.lineWidth = casing ? widthPx * 2 + 0.5 : widthPx;
    pen.stroke();
  }
  pen.setLineDash([]);
  pen.globalAlpha = 1;
}

/** Traces a line through points; where one is missing the line has a gap, and a point between gaps is a dot. */
export function traceGapped(pen: Pen, points: readonly (Point | null)[]): void {
  let begun = false;
  for (const point of points) {
    if (point === null) begun = false;
    else if (begun) pen.lineTo(point.x, point.y);
    else {
      pen.moveTo(point.x, point.y);
      pen.lineTo(point.x, point.y);
      begun = true;
    }
  }
}

/** A filled dot with a dark rim. */
export function dot(pen: Pen, { x, y }: Point, radiusPx: number, colour: string): void {
  pen.beginPath();
  pen.arc(x, y, radiusPx, 0, 2 * Math.PI);
  pen.fillStyle = colour;
  pen.fill();
  pen.strokeStyle = ink.dark;
  pen.lineWidth = radiusPx * 0.4;
  pen.stroke();
}

/** Words with a dark rim, their middle line at a point. */
export function casedWords(
  pen: Pen,
  words: string,
  { at, sizePx, align }: { readonly at: Point; readonly sizePx: number; readonly align: 'left' | 'center' },
): void {
  setFace(pen, sizePx, 700);
  pen.direction = directionOf(words);
  pen.textAlign = align;
  pen.textBaseline = 'middle';
  pen.strokeStyle = ink.dark;
  pen.lineWidth = sizePx / 4;
  pen.strokeText(words, at.x, at.y);
  pen.fillStyle = ink.chalk;
  pen.fillText(words, at.x, at.y);
  pen.direction = 'ltr';
}
