import * as v from 'valibot';
import { longestNarrationUs, trackPieceSchema, trackSchema } from '../../engine/narration/narration.ts';
import { act, host, read } from './kinds.ts';
import { filePath, id, isoTime, none } from './shapes.ts';

const us = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(longestNarrationUs));

/** The most bytes of sound in one piece: minutes of speech. */
export const mostSoundBytes = 2_000_000;

/** What was said over a clip. */
export const narrationSchema = v.strictObject({
  narrationId: id,
  madeAt: isoTime,
  /** `recording`: it is being recorded, or that was interrupted. */
  state: v.picklist(['recording', 'kept']),
  lastsUs: v.number(),
  sizeBytes: v.number(),
  /** What was shown, in pixels of the upright picture as it is now; null until it is kept. */
  track: v.nullable(trackSchema),
});
export type Narration = v.InferOutput<typeof narrationSchema>;

/** Requests on what a coach says over a clip. None is undone: a voice that is deleted is gone. */
export const narrationRequests = {
  /** The narration of a clip; null where there is none. */
  'narrations.get': read({ params: v.strictObject({ clipId: id }), result: v.nullable(narrationSchema) }),
  /** Begins the narration of a clip that has none. */
  'narrations.begin': act({ params: v.strictObject({ clipId: id }), result: v.strictObject({ narrationId: id }) }),
  /**
   * Adds what was said and shown since the last piece; it is on disk when this answers. A part is recorded in one go: after a pause the
   * next one begins, and its sound is a file of its own.
   */
  'narrations.append': act({
    params: v.strictObject({
      narrationId: id,
      part: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(999)),
      /** How long the part lasts by now. */
      partLastsUs: us,
      sound: v.pipe(
        v.instance(Uint8Array),
        v.check((bytes) => bytes.byteLength <= mostSoundBytes, 'too much sound in one piece'),
      ),
      /** Times count from the narration's beginning. */
      shown: trackPieceSchema,
    }),
    result: none,
  }),
  /** Keeps what was recorded as one sound with its track; also what a crash left. */
  'narrations.keep': act({ params: v.strictObject({ narrationId: id }), result: none }),
  /** Deletes a narration with its sound, for good. */
  'narrations.remove': act({ params: v.strictObject({ narrationId: id }), result: none }),
  /** Puts a film of a clip's narration in line, to be written to a file. */
  'narrations.render': host({
    params: v.strictObject({ clipId: id, path: filePath }),
    result: v.strictObject({ jobId: id }),
  }),
} as const;

export const narrationWindowRequests = {
  /** Asks where to save, then puts the film in line. */
  'narrations.save': {
    params: v.strictObject({ clipId: id, suggestedName: v.pipe(v.string(), v.maxLength(200)) }),
    result: v.strictObject({ jobId: v.nullable(id) }),
  },
} as const;
