import * as v from 'valibot';
import { viewSchema } from '../../engine/exercises/exercise.ts';
import { brightnessSchema, cropSchema, turns } from '../../engine/framing/framing.ts';
import { messageSchema } from '../../engine/message/message.ts';
import { frameTableSchema } from '../../engine/time/frameTable.ts';
import { act, host, read } from './kinds.ts';
import { filePath, frame, id, keptDate, name, none } from './shapes.ts';

/** What the player needs to know of a clip, beside the review. */
export const clipMediaSchema = v.strictObject({
  clipId: id,
  /** False while an import or proxy is still being made, or the file is missing. */
  ready: v.boolean(),
  /** Why it can't be played, as a problem that `sayProblem` says; null when it can. */
  trouble: v.nullable(messageSchema),
  /** Plays from a proxy: the original's codec is not playable in the window. */
  proxy: v.boolean(),
  /** Size of the upright picture, turned as the coach turned it. */
  width: v.number(),
  height: v.number(),
  durationUs: v.number(),
  frames: v.number(),
  constantRate: v.boolean(),
  /** Mean frames per second, for display. */
  meanFps: v.number(),
  hasPoster: v.boolean(),
  /** Number of pictures side by side in the filmstrip; 0 = none yet. */
  filmstripPictures: v.number(),
});
export type ClipMedia = v.InferOutput<typeof clipMediaSchema>;

const clipChange = v.strictObject({
  view: v.optional(v.nullable(viewSchema)),
  realTimeFactor: v.optional(v.pipe(v.number(), v.finite(), v.minValue(0.01), v.maxValue(100))),
  loadKg: v.optional(v.nullable(v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1000)))),
  name: v.optional(name),
});

export const clipRequests = {
  /** Copies files in and reads them, one job a file; into an entry, or into a new entry of the given exercise. */
  'clips.import': act({
    params: v.strictObject({
      sessionId: id,
      entryId: v.optional(id),
      exercise: v.optional(v.string()),
      view: v.optional(v.nullable(viewSchema), null),
      paths: v.pipe(v.array(filePath), v.minLength(1), v.maxLength(200)),
    }),
    result: v.strictObject({ jobIds: v.array(id) }),
  }),
  'clips.update': act({ params: v.strictObject({ clipId: id, change: clipChange }), result: none }),
  /**
   * Changes how the picture is shown, here and in what leaves. `crop` is told in pixels of the picture as it is turned afterwards; null
   * = all of it.
   */
  'clips.frame': act({
    params: v.strictObject({
      clipId: id,
      change: v.strictObject({
        turnDeg: v.optional(v.picklist(turns)),
        mirrored: v.optional(v.boolean()),
        crop: v.optional(v.nullable(cropSchema)),
        brightness: v.optional(brightnessSchema),
      }),
    }),
    result: none,
  }),
  /** Shows some frames of the footage alone; null = all of it. */
  'clips.trim': act({
    params: v.strictObject({
      clipId: id,
      section: v.nullable(v.strictObject({ firstFrame: frame, lastFrame: frame })),
    }),
    result: none,
  }),
  /** Makes several clips of one, each of a part of the same footage; each cut is the first frame of a part. Gives their ids in order. */
  'clips.split': act({
    params: v.strictObject({ clipId: id, cuts: v.pipe(v.array(frame), v.minLength(1), v.maxLength(50)) }),
    result: v.strictObject({ clipIds: v.array(id) }),
  }),
  'clips.remove': act({ params: v.strictObject({ clipId: id }), result: none }),
  'clips.frameTable': read({
    params: v.strictObject({ clipId: id }),
    /** `playback`: the times to seek in what the player plays, frame for frame; equal to `table` unless a proxy plays. */
    result: v.strictObject({ table: frameTableSchema, playback: frameTableSchema }),
  }),
  /** Clips of the same trainee and exercise as a clip, the newest session first; itself among them. */
  'clips.alike': read({
    params: v.strictObject({ clipId: id }),
    result: v.array(
      v.strictObject({ clipId: id, sessionId: id, date: keptDate, name: v.string(), exercise: v.string() }),
    ),
  }),
  /** Where a clip, a picture of it, or what was said over it lies on disk; asked by the media protocol. */
  'media.resolve': host({
    params: v.strictObject({ clipId: id, what: v.picklist(['clip', 'poster', 'filmstrip', 'voice']) }),
    result: v.strictObject({ path: filePath, type: v.string() }),
  }),
} as const;

export const clipWindowRequests = {
  /** Asks for clips. */
  'clips.choose': { params: none, result: v.strictObject({ paths: v.array(filePath) }) },
} as const;
