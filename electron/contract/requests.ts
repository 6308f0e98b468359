import * as v from 'valibot';
import type { Caution } from '../../engine/exercises/caution.ts';
import type { Exercise } from '../../engine/exercises/exercise.ts';
import { goalSchema, viewSchema } from '../../engine/exercises/exercise.ts';
import type { SessionGrade } from '../../engine/grading/grade.ts';
import { planSchema, reviewSchema } from '../../engine/review/review.ts';
import type { Rubric } from '../../engine/rubric/rubric.ts';
import { frameTableSchema } from '../../engine/time/frameTable.ts';
import { comparingRequests } from './comparing.ts';
import { coverRequests, keptCoverSchema } from './covers.ts';
import { documentRequests, documentWindowRequests } from './documents.ts';
import { drawingRequests } from './drawings.ts';
import { handoverRequests, handoverWindowRequests, nameModeSchema } from './handover.ts';
import { judgingRequests } from './judging.ts';
import { letterRequests } from './letters.ts';
import { measuringRequests } from './measuring.ts';
import {
  changed,
  engineType,
  filePath,
  frame,
  historyStateSchema,
  id,
  isoDate,
  isoTime,
  name,
  none,
  remark,
} from './shapes.ts';

export { type HistoryState, historyStateSchema } from './shapes.ts';

export const voiceSchema = v.picklist(['coach', 'self']);
export type Voice = v.InferOutput<typeof voiceSchema>;

export const jobSchema = v.strictObject({
  id,
  kind: v.picklist(['demo', 'import', 'proxy', 'measure', 'handover']),
  title: v.string(),
  state: v.picklist(['waiting', 'running', 'done', 'failed', 'cancelled']),
  /** 0-1; null while unknown. */
  progress: v.nullable(v.number()),
  /** What it is doing, or the sentence of its failure. */
  message: v.string(),
  sessionId: v.nullable(id),
  clipId: v.nullable(id),
});
export type Job = v.InferOutput<typeof jobSchema>;

export const libraryStateSchema = v.variant('kind', [
  /** No library in the data folder yet: first start. */
  v.strictObject({ kind: v.literal('none') }),
  v.strictObject({ kind: v.literal('open'), folder: v.string(), voice: voiceSchema, coach: v.string() }),
  /** The library can't be opened; nothing was changed. */
  v.strictObject({ kind: v.literal('failed'), sentence: v.string() }),
]);
export type LibraryState = v.InferOutput<typeof libraryStateSchema>;

export const traineeSchema = v.strictObject({
  id,
  name,
  goal: goalSchema,
  experience: v.picklist(['new', 'experienced']),
  units: v.picklist(['kg', 'lb']),
  minor: v.boolean(),
});
export type Trainee = v.InferOutput<typeof traineeSchema>;
/** A trainee with how they want to be named in what leaves the desk. */
export const namedTraineeSchema = v.strictObject({ ...traineeSchema.entries, names: nameModeSchema });
export type NamedTrainee = v.InferOutput<typeof namedTraineeSchema>;

export const sessionSummarySchema = v.strictObject({
  id,
  traineeId: id,
  traineeName: v.string(),
  title: v.string(),
  date: isoDate,
  /** Exercise ids in order. */
  exercises: v.array(v.string()),
  clips: v.number(),
  /** The first clips that have a poster, at most three, to be recognised by. */
  posterClipIds: v.array(id),
  flags: v.number(),
  /** The session's mark, or '' while there is none. */
  mark: v.string(),
  provisional: v.boolean(),
  /** The coach set the session's grade, or one of its exercises', by hand. */
  byHand: v.boolean(),
  /** The session it judges again, blind; null for a session of its own. */
  secondLookOf: v.nullable(id),
  /** It came from another desk: acts on it are refused. */
  readOnly: v.boolean(),
  /** 0-1, mean over entries. */
  coverage: v.number(),
});
export type SessionSummary = v.InferOutput<typeof sessionSummarySchema>;

/** What the player needs to know of a clip, beside the review. */
export const clipMediaSchema = v.strictObject({
  clipId: id,
  /** False while an import or proxy is still being made, or the file is missing. */
  ready: v.boolean(),
  /** Why it can't be played, in one sentence; '' when it can. */
  trouble: v.string(),
  /** Plays from a proxy: the original's codec is not playable in the window. */
  proxy: v.boolean(),
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

/**
 * Every request a screen, a command or a test can make of the backend: what goes in, what comes out.
 * Both ends derive their types from this table and check both directions against it.
 */
export const requests = {
  'library.state': { params: none, result: libraryStateSchema },
  /** First start: a new library, empty or with the demo session; the demo is made by a job. */
  'library.create': {
    params: v.strictObject({
      contents: v.picklist(['demo', 'empty']),
      voice: voiceSchema,
      coach: v.optional(v.string(), ''),
    }),
    result: v.strictObject({ jobId: v.nullable(id) }),
  },
  /** Adds the sample session; it is made by a job. */
  'library.addDemo': { params: none, result: v.strictObject({ jobId: id }) },
  'library.verify': {
    params: none,
    result: v.strictObject({
      sound: v.boolean(),
      findings: v.array(v.string()),
      clips: v.number(),
      sessions: v.number(),
    }),
  },
  /** The judging data under a version of the rubric; under the newest without one. */
  'catalogue.get': {
    params: v.strictObject({ version: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1))) }),
    result: v.strictObject({
      rubric: engineType<Rubric>(),
      exercises: v.array(engineType<Exercise>()),
      cautions: v.array(engineType<Caution>()),
      /** The versions of the rubric there are, ascending. */
      rubricVersions: v.array(v.number()),
    }),
  },
  'desk.get': {
    params: none,
    result: v.strictObject({ sessions: v.array(sessionSummarySchema), trainees: v.array(namedTraineeSchema) }),
  },
  'trainees.add': {
    params: v.strictObject({
      ...v.omit(traineeSchema, ['id']).entries,
      names: v.optional(nameModeSchema, 'full'),
    }),
    result: v.strictObject({ traineeId: id }),
  },
  'sessions.add': {
    params: v.strictObject({ traineeId: id, title: v.optional(v.string(), ''), date: isoDate }),
    result: v.strictObject({ sessionId: id }),
  },
  'sessions.update': {
    params: v.strictObject({
      sessionId: id,
      title: v.optional(v.pipe(v.string(), v.maxLength(200))),
      date: v.optional(isoDate),
      notes: v.optional(remark),
      painNote: v.optional(remark),
    }),
    result: changed,
  },
  'entries.add': {
    params: v.strictObject({ sessionId: id, exercise: v.string(), plan: v.optional(planSchema) }),
    result: v.strictObject({ entryId: id, history: historyStateSchema }),
  },
  'entries.update': {
    params: v.strictObject({
      entryId: id,
      exercise: v.optional(v.string()),
      plan: v.optional(v.nullable(planSchema)),
      setsDone: v.optional(v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(50)))),
    }),
    result: changed,
  },
  'entries.remove': { params: v.strictObject({ entryId: id }), result: changed },
  /** Copies files in and reads them, one job a file; into an entry, or into a new entry of the given exercise. */
  'clips.import': {
    params: v.strictObject({
      sessionId: id,
      entryId: v.optional(id),
      exercise: v.optional(v.string()),
      view: v.optional(v.nullable(viewSchema), null),
      paths: v.pipe(v.array(filePath), v.minLength(1), v.maxLength(200)),
    }),
    result: v.strictObject({ jobIds: v.array(id) }),
  },
  'clips.update': { params: v.strictObject({ clipId: id, change: clipChange }), result: changed },
  'clips.remove': { params: v.strictObject({ clipId: id }), result: changed },
  'clips.frameTable': {
    params: v.strictObject({ clipId: id }),
    /** `playback`: the times to seek in what the player plays, frame for frame; equal to `table` unless a proxy plays. */
    result: v.strictObject({ table: frameTableSchema, playback: frameTableSchema }),
  },
  /** A session whole, as the review format has it, with what the player needs. */
  'review.get': {
    params: v.strictObject({ sessionId: id }),
    result: v.strictObject({
      review: reviewSchema,
      media: v.array(clipMediaSchema),
      /** What is covered in its clips, clip by clip. */
      covers: v.array(keptCoverSchema),
      history: historyStateSchema,
      /** It came from another desk: acts on it are refused. */
      readOnly: v.boolean(),
      /** How the trainee wants to be named in what leaves the desk. */
      names: nameModeSchema,
      /** Where the coach was: clip and frame. */
      place: v.nullable(v.strictObject({ clipId: id, frame })),
    }),
  },
  /** Takes a review file and its clips into the library, as a new session; clips are read by a job. */
  'reviews.import': {
    params: v.strictObject({ path: filePath }),
    result: v.strictObject({ sessionId: id, jobId: id }),
  },
  /** Remembers the place; a view change, never an act of history. */
  'place.set': { params: v.strictObject({ sessionId: id, clipId: id, frame }), result: none },
  'history.undo': { params: v.strictObject({ sessionId: id }), result: changed },
  'history.redo': { params: v.strictObject({ sessionId: id }), result: changed },
  'history.list': {
    params: v.strictObject({ sessionId: id }),
    result: v.array(
      v.strictObject({ id: v.number(), name: v.string(), at: isoTime, undone: v.boolean(), dropped: v.boolean() }),
    ),
  },
  'grade.get': { params: v.strictObject({ sessionId: id }), result: engineType<SessionGrade>() },
  ...documentRequests,
  ...drawingRequests,
  ...coverRequests,
  ...judgingRequests,
  ...letterRequests,
  ...comparingRequests,
  ...measuringRequests,
  ...handoverRequests,
  'jobs.list': { params: none, result: v.array(jobSchema) },
  'jobs.cancel': { params: v.strictObject({ jobId: id }), result: none },
  'jobs.retry': { params: v.strictObject({ jobId: id }), result: none },
  /** Where a picture or clip lies on disk; asked by the media protocol, never by a screen. */
  'media.resolve': {
    params: v.strictObject({ clipId: id, what: v.picklist(['clip', 'poster', 'filmstrip']) }),
    result: v.strictObject({ path: filePath, type: v.string() }),
  },
} as const;

export type RequestName = keyof typeof requests;
export type Params<N extends RequestName> = v.InferInput<(typeof requests)[N]['params']>;
export type CheckedParams<N extends RequestName> = v.InferOutput<(typeof requests)[N]['params']>;
export type Result<N extends RequestName> = v.InferOutput<(typeof requests)[N]['result']>;

/** Requests that no screen may make. */
export const hostOnly: ReadonlySet<RequestName> = new Set([
  'media.resolve',
  'documents.write',
  'reviews.import',
  'handover.start',
  'handover.writeKept',
]);

/** Requests that the window's host answers itself: native dialogs and the shell. */
export const windowRequests = {
  ...documentWindowRequests,
  /** Asks for clips. */
  'clips.choose': { params: none, result: v.strictObject({ paths: v.array(filePath) }) },
  ...handoverWindowRequests,
} as const;
export type WindowRequestName = keyof typeof windowRequests;
export type WindowParams<N extends WindowRequestName> = v.InferInput<(typeof windowRequests)[N]['params']>;
export type CheckedWindowParams<N extends WindowRequestName> = v.InferOutput<(typeof windowRequests)[N]['params']>;
export type WindowResult<N extends WindowRequestName> = v.InferOutput<(typeof windowRequests)[N]['result']>;
