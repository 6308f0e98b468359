import * as v from 'valibot';
import { nameModes } from '../../engine/handover/shownName.ts';
import { filePath, id, isoDate, isoTime, none } from './shapes.ts';

export const nameModeSchema = v.picklist(nameModes);

const share = v.pipe(v.number(), v.minValue(0.05), v.maxValue(1));
const px = v.pipe(v.number(), v.finite(), v.minValue(-100_000), v.maxValue(100_000));

/** What a clip does at a remark: stands still, goes slowly around it, or plays on. */
export const atNotesSchema = v.variant('do', [
  v.strictObject({ do: v.literal('freeze'), lastsS: v.pipe(v.number(), v.minValue(0.1), v.maxValue(10)) }),
  v.strictObject({ do: v.literal('slow'), speed: share }),
  v.strictObject({ do: v.literal('playOn') }),
]);

/** What is made unrecognisable in every picture of every clip. */
export const coveringSchema = v.strictObject({
  /** The lifter's head, followed by the joints that were measured. */
  head: v.optional(v.boolean(), false),
  /** Places that are covered all through. */
  boxes: v.optional(
    v.pipe(
      v.array(
        v.strictObject({
          leftPx: px,
          topPx: px,
          widthPx: v.pipe(px, v.minValue(1)),
          heightPx: v.pipe(px, v.minValue(1)),
        }),
      ),
      v.maxLength(20),
    ),
    [],
  ),
  look: v.optional(v.picklist(['filled', 'mosaic']), 'filled'),
});
export type Covering = v.InferOutput<typeof coveringSchema>;

/** How a handover's clips are made. */
export const clipOptionsSchema = v.strictObject({
  atNotes: v.optional(atNotesSchema, { do: 'freeze', lastsS: 1.5 }),
  sound: v.optional(v.picklist(['kept', 'dropped']), 'kept'),
  loops: v.optional(v.boolean(), true),
  covering: v.optional(coveringSchema, {}),
});
export type ClipOptions = v.InferOutput<typeof clipOptionsSchema>;

export const handoverOptionsSchema = v.strictObject({
  ...clipOptionsSchema.entries,
  /** How the trainee is named; as the trainee wants it where nothing is said. */
  names: v.optional(nameModeSchema),
  /** False: stills and documents alone. */
  clips: v.optional(v.boolean(), true),
  /** The footage as it was filmed, without its metadata, besides. */
  originals: v.optional(v.boolean(), false),
  paper: v.optional(v.picklist(['a4', 'letter']), 'a4'),
  /** The day to film again; a week from the day of handing over where nothing is said. */
  nextFilming: v.optional(isoDate),
  /** One zip in place of a folder. */
  zip: v.optional(v.boolean(), false),
});
export type HandoverOptions = v.InferOutput<typeof handoverOptionsSchema>;

/** Something that could not be delivered, and why, in one sentence. */
export const undeliveredSchema = v.strictObject({ clip: v.string(), sentence: v.string() });
export type Undelivered = v.InferOutput<typeof undeliveredSchema>;

export const handedOverSchema = v.strictObject({
  version: v.number(),
  handedAt: isoTime,
  rubricVersion: v.number(),
  /** The sent letter that went with it. */
  letterVersion: v.number(),
  names: nameModeSchema,
  /** SHA-256 of the kept zip. */
  sha256: v.string(),
});
export type HandedOver = v.InferOutput<typeof handedOverSchema>;

export const deliverySchema = v.strictObject({
  jobId: id,
  version: v.number(),
  deliveredAt: isoTime,
  path: v.string(),
  bytes: v.number(),
  failed: v.array(undeliveredSchema),
});

/** Requests that hand sessions over, and tell what was handed over. */
export const handoverRequests = {
  /**
   * Puts sessions in line to be handed over, one job each: a folder or a zip of its own within `folder`. What says
   * something new is kept as the session's next version; the same again is written out as the version it was.
   */
  'handover.start': {
    params: v.strictObject({
      sessionIds: v.pipe(v.array(id), v.minLength(1), v.maxLength(500)),
      folder: filePath,
      options: v.optional(handoverOptionsSchema, {}),
    }),
    result: v.strictObject({ jobIds: v.array(id) }),
  },
  /** What was handed over of a session, the first version first, and every time that it was written out. */
  'handover.list': {
    params: v.strictObject({ sessionId: id }),
    result: v.strictObject({
      /** How the trainee wants to be named. */
      names: nameModeSchema,
      /** It came from another desk, and acts on it are refused. */
      readOnly: v.boolean(),
      versions: v.array(handedOverSchema),
      deliveries: v.array(deliverySchema),
    }),
  },
  /** Sessions with a grade that were never handed over, or changed since. */
  'handover.due': {
    params: none,
    result: v.array(
      v.strictObject({ sessionId: id, trainee: v.string(), title: v.string(), lastVersion: v.nullable(v.number()) }),
    ),
  },
  /** Writes a version as it was handed over, as one zip: everything but its clips. */
  'handover.writeKept': {
    params: v.strictObject({ sessionId: id, version: v.pipe(v.number(), v.integer(), v.minValue(1)), path: filePath }),
    result: v.strictObject({ path: filePath, bytes: v.number() }),
  },
  /** How a trainee wants to be named in what leaves the desk. */
  'trainees.names': { params: v.strictObject({ traineeId: id, names: nameModeSchema }), result: none },
} as const;
