import * as v from 'valibot';
import { boxSchema, coverLookSchema, mostCovers } from '../../engine/covers/cover.ts';
import { messageSchema } from '../../engine/message/message.ts';
import { sheetLengths } from '../../engine/sheet/sheetExtras.ts';
import { sessionSummarySchema } from './desk.ts';
import { host, read } from './kinds.ts';
import { filePath, id, isoDate, isoTime, nameModeSchema, none, pageParams } from './shapes.ts';

/** Papers that a PDF is set for. */
export const papers = ['a4', 'letter'] as const;
export type Paper = (typeof papers)[number];
export const paperSchema = v.picklist(papers);

const share = v.pipe(v.number(), v.minValue(0.05), v.maxValue(1));

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
  boxes: v.optional(v.pipe(v.array(boxSchema), v.maxLength(mostCovers)), []),
  look: v.optional(coverLookSchema, 'filled'),
});
export type Covering = v.InferOutput<typeof coveringSchema>;

/** How a handover's clips are made. */
export const clipOptionsSchema = v.strictObject({
  atNotes: v.optional(atNotesSchema, { do: 'freeze', lastsS: 1.5 }),
  sound: v.optional(v.picklist(['kept', 'dropped']), 'kept'),
  loops: v.optional(v.boolean(), true),
  /** Clips that were narrated, as films with the coach's voice. */
  narrated: v.optional(v.boolean(), false),
  covering: v.optional(coveringSchema, {}),
});
export type ClipOptions = v.InferOutput<typeof clipOptionsSchema>;

export const handoverOptionsSchema = v.strictObject({
  ...clipOptionsSchema.entries,
  /** How the trainee is named; as the trainee wants it where nothing is said. */
  names: v.optional(nameModeSchema),
  /** False: stills and documents alone. */
  clips: v.optional(v.boolean(), true),
  /** The clips by themselves: as filmed, without their metadata, or with their covers. As `clips` where nothing is said. */
  originals: v.optional(v.boolean()),
  /** How much the sheet tells; its data are whole either way. */
  sheet: v.optional(v.picklist(sheetLengths), 'full'),
  paper: v.optional(paperSchema, 'a4'),
  /** The day to film again; a week from the day of handing over where nothing is said. */
  nextFilming: v.optional(isoDate),
  /** One zip in place of a folder. */
  zip: v.optional(v.boolean(), false),
});
export type HandoverOptions = v.InferOutput<typeof handoverOptionsSchema>;

/** Something that could not be delivered, and why: in English, and as data since there is a German desk. */
export const undeliveredSchema = v.strictObject({
  clip: v.string(),
  sentence: v.string(),
  message: v.optional(messageSchema),
});
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
  /** The job that wrote it out. */
  jobId: id,
  version: v.number(),
  deliveredAt: isoTime,
  path: v.string(),
  bytes: v.number(),
  failed: v.array(undeliveredSchema),
});

const sessionToHandOver = v.strictObject({
  session: sessionSummarySchema,
  /** The newest version that was handed over, and when; null before the first. */
  last: v.nullable(v.strictObject({ version: v.number(), handedAt: isoTime })),
  /** It was never handed over, or changed since. */
  due: v.boolean(),
});

/** Requests that hand sessions over, and tell what was handed over. */
export const handoverRequests = {
  /**
   * Puts sessions in line to be handed over, one job each: a folder or a zip of its own within `folder`. What says
   * something new is kept as the session's next version; the same again is written out as the version it was.
   */
  'handover.start': host({
    params: v.strictObject({
      sessionIds: v.pipe(v.array(id), v.minLength(1), v.maxLength(500)),
      folder: filePath,
      options: v.optional(handoverOptionsSchema, {}),
    }),
    result: v.strictObject({ jobIds: v.array(id) }),
  }),
  /** What was handed over of a session, the first version first, and every time that it was written out. */
  'handover.list': read({
    params: v.strictObject({ sessionId: id }),
    result: v.strictObject({
      /** How the trainee wants to be named. */
      names: nameModeSchema,
      /** It came from another coach's Rackside, and acts on it are refused. */
      readOnly: v.boolean(),
      versions: v.array(handedOverSchema),
      deliveries: v.array(deliverySchema),
    }),
  }),
  /** One page of the sessions with a grade that can be handed over, the newest day first. */
  'handover.sessions': read({
    params: v.strictObject(pageParams),
    result: v.strictObject({ sessions: v.array(sessionToHandOver), next: v.nullable(v.string()) }),
  }),
  /** One of them; null where the session can't be handed over. */
  'handover.session': read({ params: v.strictObject({ sessionId: id }), result: v.nullable(sessionToHandOver) }),
  /** Writes a version as it was handed over, as one zip: everything but its clips. */
  'handover.writeKept': host({
    params: v.strictObject({ sessionId: id, version: v.pipe(v.number(), v.integer(), v.minValue(1)), path: filePath }),
    result: v.strictObject({ path: filePath, bytes: v.number() }),
  }),
} as const;

/** What a window's host asks a person first: where a handover goes, which one is imported. `null`: they changed their mind. */
export const handoverWindowRequests = {
  /** Asks for a folder, then puts the sessions in line to be handed over into it. */
  'handover.deliver': {
    params: v.omit(handoverRequests['handover.start'].params, ['folder']),
    result: v.strictObject({ jobIds: v.nullable(v.array(id)) }),
  },
  /** Asks where to save, then writes a version as it was handed over. */
  'handover.saveKept': {
    params: v.strictObject({
      sessionId: id,
      version: v.pipe(v.number(), v.integer(), v.minValue(1)),
      suggestedName: v.pipe(v.string(), v.maxLength(200)),
    }),
    result: v.strictObject({ path: v.nullable(v.string()) }),
  },
  /** Shows in the system's file manager where a handover was written. */
  'handover.show': { params: v.strictObject({ sessionId: id, jobId: id }), result: none },
  /**
   * Asks for a handover's folder, or for its zip or a review file, or takes the next file that the system named, and imports it as a session by a job. Not yet where a review file names
   * footage outside its own folder: that is given, to be shown first.
   */
  'handover.receive': {
    params: v.strictObject({ from: v.picklist(['folder', 'file', 'named']) }),
    result: v.strictObject({ jobId: v.nullable(id), footageOutside: v.array(v.string()) }),
  },
  /** Imports the review file that was last asked about, with the footage that was shown. */
  'handover.receiveShown': { params: none, result: v.strictObject({ jobId: v.nullable(id) }) },
} as const;
