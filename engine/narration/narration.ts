import * as v from 'valibot';
import { drawnSchema } from '../review/drawings/drawing.ts';

/** The longest narration, in microseconds: fifteen minutes. */
export const longestNarrationUs = 15 * 60 * 1_000_000;
/** Changes of the picture in fifteen minutes at 120 a second; no screen shows more. */
const mostFrames = 108_000;
const mostLooks = 20_000;
const mostDrawn = 5_000;

const us = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(longestNarrationUs));
const frame = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10_000_000));
const pixels = v.pipe(v.number(), v.finite(), v.minValue(-100_000), v.maxValue(100_000));

/** How near the picture is: as a factor of the whole picture, and what lies in the middle, in pixels of the upright picture. */
const nearnessSchema = v.strictObject({
  scale: v.pipe(v.number(), v.finite(), v.minValue(1), v.maxValue(16)),
  x: pixels,
  y: pixels,
});
export type Nearness = v.InferOutput<typeof nearnessSchema>;

/** What measuring draws over the picture. */
export const narratedLayers = ['path', 'disc', 'joints'] as const;
export type NarratedLayer = (typeof narratedLayers)[number];

/** What lies over the picture, and how near it is, from a time on. */
const lookSchema = v.strictObject({
  atUs: us,
  /** null = the whole picture. */
  near: v.nullable(nearnessSchema),
  /** What is drawn over it: places in the track's list of shapes. */
  drawn: v.pipe(v.array(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(mostDrawn))), v.maxLength(500)),
  /** The layers of measuring that are switched on. */
  layers: v.pipe(v.array(v.picklist(narratedLayers)), v.maxLength(narratedLayers.length)),
});
export type Look = v.InferOutput<typeof lookSchema>;

const framesSchema = v.pipe(v.array(v.strictTuple([us, frame])), v.maxLength(mostFrames));
const looksSchema = v.pipe(v.array(lookSchema), v.maxLength(mostLooks));
const shapesSchema = v.pipe(v.array(drawnSchema), v.maxLength(mostDrawn));

const rising = (times: readonly number[]): boolean => times.every((at, index) => at >= (times[index - 1] ?? 0));

/** What a coach showed while speaking, by the clock of the sound, in microseconds. */
export const trackSchema = v.pipe(
  v.strictObject({
    lastsUs: us,
    /** The frame that is on screen from a time on; times never fall. */
    frames: v.pipe(framesSchema, v.minLength(1)),
    looks: v.pipe(looksSchema, v.minLength(1)),
    /** Every shape that shows at some time, each once, in pixels of the upright picture. */
    shapes: shapesSchema,
  }),
  v.check(({ frames }) => rising(frames.map(([atUs]) => atUs)), 'times of frames fall'),
  v.check(({ looks }) => rising(looks.map(({ atUs }) => atUs)), 'times of looks fall'),
  v.check(
    ({ looks, shapes }) => looks.every(({ drawn }) => drawn.every((index) => index < shapes.length)),
    'a look names a shape that is not there',
  ),
);
export type NarrationTrack = v.InferOutput<typeof trackSchema>;

/** What came to a track since the piece before; `shapes` go behind those that are there. */
export const trackPieceSchema = v.strictObject({
  frames: v.pipe(v.array(v.strictTuple([us, frame])), v.maxLength(5_000)),
  looks: v.pipe(v.array(lookSchema), v.maxLength(1_000)),
  shapes: v.pipe(v.array(drawnSchema), v.maxLength(500)),
});
export type TrackPiece = v.InferOutput<typeof trackPieceSchema>;

/** Pieces as one track; null where they hold no picture, or contradict each other. */
export function joinPieces(pieces: readonly TrackPiece[], lastsUs: number): NarrationTrack | null {
  const track = v.safeParse(trackSchema, {
    lastsUs,
    frames: pieces.flatMap(({ frames }) => frames),
    looks: pieces.flatMap(({ looks }) => looks),
    shapes: pieces.flatMap(({ shapes }) => shapes),
  });
  return track.success ? track.output : null;
}
