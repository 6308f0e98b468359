import * as v from 'valibot';
import { frameAtUs, frameOfMoment } from '../../time/frames.ts';
import type { FrameTable } from '../../time/frameTable.ts';
import { type Moment, momentSchema, ticksToUs } from '../../time/moment.ts';

const coordinate = v.pipe(v.number(), v.finite(), v.minValue(-100_000), v.maxValue(100_000));

/** A place in the upright picture, in pixels: x to the right, y downwards, from its top left corner. */
export const pointSchema = v.strictObject({ x: coordinate, y: coordinate });
export type Point = v.InferOutput<typeof pointSchema>;

const two = v.strictTuple([pointSchema, pointSchema]);

/** What each shape holds: its name and its points. */
const shapes = {
  /** From one point to the other. */
  line: { shape: v.literal('line'), points: two },
  /** End of one arm, apex, end of the other arm. */
  angle: { shape: v.literal('angle'), points: v.strictTuple([pointSchema, pointSchema, pointSchema]) },
  /** A vertical: both points have the same x. */
  plumb: { shape: v.literal('plumb'), points: two },
  /** Middle, and a point of the rim. */
  circle: { shape: v.literal('circle'), points: two },
  /** A free stroke through its points. */
  stroke: { shape: v.literal('stroke'), points: v.pipe(v.array(pointSchema), v.minLength(2), v.maxLength(2000)) },
  /** Words that begin at a point. */
  text: {
    shape: v.literal('text'),
    points: v.strictTuple([pointSchema]),
    text: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(200)),
  },
} as const;

/** A shape by itself, without its time. */
export const drawnSchema = v.variant('shape', [
  v.strictObject(shapes.line),
  v.strictObject(shapes.angle),
  v.strictObject(shapes.plumb),
  v.strictObject(shapes.circle),
  v.strictObject(shapes.stroke),
  v.strictObject(shapes.text),
]);
export type Drawn = v.InferOutput<typeof drawnSchema>;
export type DrawingShape = Drawn['shape'];

const timed = {
  id: v.pipe(v.string(), v.regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/)),
  /** First and last moment at which it shows. */
  from: momentSchema,
  to: momentSchema,
} as const;

/** Something drawn over the picture of a clip, shown from one moment to another. */
export const drawingSchema = v.variant('shape', [
  v.strictObject({ ...timed, ...shapes.line }),
  v.strictObject({ ...timed, ...shapes.angle }),
  v.strictObject({ ...timed, ...shapes.plumb }),
  v.strictObject({ ...timed, ...shapes.circle }),
  v.strictObject({ ...timed, ...shapes.stroke }),
  v.strictObject({ ...timed, ...shapes.text }),
]);
export type Drawing = v.InferOutput<typeof drawingSchema>;

/** The most drawings that a clip can hold. */
export const mostDrawings = 500;

/** The shape of a drawing by itself. */
export function drawnOf({ id: _id, from: _from, to: _to, ...drawn }: Drawing): Drawn {
  return drawn;
}

type RepEdges = { readonly start: Moment; readonly end?: Moment | undefined };

/**
 * The last frame at which something drawn at a frame shows by itself: the end of the rep it was drawn in; outside of
 * reps that have an end, the frame one second of footage later, or the clip's last.
 */
export function usualLastFrame(frame: number, reps: readonly RepEdges[], table: FrameTable): number {
  const ends = reps.flatMap(({ start, end }) => {
    if (end === undefined || frameOfMoment(start, table) > frame) return [];
    const last = frameOfMoment(end, table);
    return last >= frame ? [last] : [];
  });
  if (ends.length > 0) return Math.min(...ends);
  const ticks = table.ticks[frame];
  if (ticks === undefined) return frame;
  return frameAtUs(table, ticksToUs(ticks, table.timeBase) + 1_000_000);
}

/** Whether a frame lies within a drawing's time, both ends included. */
export function showsAt(drawing: { readonly from: Moment; readonly to: Moment }, frame: number, table: FrameTable) {
  return frameOfMoment(drawing.from, table) <= frame && frame <= frameOfMoment(drawing.to, table);
}
