import * as v from 'valibot';
import { equipmentSchema } from '../exercises/equipment.ts';
import { goalSchema, viewSchema } from '../exercises/exercise.ts';
import { framingSchema } from '../framing/framing.ts';
import { sectionSchema } from '../framing/section.ts';
import type { Message } from '../message/message.ts';
import { setUpSchema } from '../recording/setUp.ts';
import { criterionIdSchema, severitySchema } from '../rubric/rubric.ts';
import { timeBaseSchema } from '../time/frameTable.ts';
import { momentSchema } from '../time/moment.ts';
import { drawingSchema, mostDrawings } from './drawings/drawing.ts';
import { mostInReview } from './limits.ts';
import { planSchema } from './plan.ts';

const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/));
/** Composed: macOS keeps the names of files decomposed. */
const name = v.pipe(v.string(), v.normalize('NFC'), v.trim(), v.minLength(1), v.maxLength(200));
const remark = v.pipe(v.string(), v.maxLength(2000));
const finite = v.pipe(v.number(), v.finite());
const count = (most: number) => v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(most));

const measuredEdgeSchema = v.picklist(['start', 'stretchedEnd', 'end']);
export type MeasuredEdge = v.InferOutput<typeof measuredEdgeSchema>;

/** One repetition: where it starts, reaches the stretched end, and ends. */
export const repSchema = v.strictObject({
  index: v.pipe(count(500), v.minValue(1)),
  start: momentSchema,
  stretchedEnd: v.optional(momentSchema),
  end: v.optional(momentSchema),
  /** Which of its edges come from measuring; a person set the others. */
  measured: v.optional(v.pipe(v.array(measuredEdgeSchema), v.minLength(1), v.maxLength(3))),
});
export type Rep = v.InferOutput<typeof repSchema>;

/** Which reps a flag or tick speaks of: the whole set, or reps by index. */
export const repsSchema = v.union([
  v.literal('set'),
  v.pipe(v.array(v.pipe(count(500), v.minValue(1))), v.minLength(1), v.maxLength(500)),
]);
export type Reps = v.InferOutput<typeof repsSchema>;

/**
 * A time-stamped judgement. `fault` null = a remark without a named fault, or praise; `severity` null = a plain note, which
 * judges nothing and looks at no cell.
 */
export const flagSchema = v.strictObject({
  id: v.optional(id),
  clip: id,
  criterion: criterionIdSchema,
  fault: v.optional(v.nullable(v.string()), null),
  severity: v.nullable(severitySchema),
  reps: repsSchema,
  at: momentSchema,
  note: v.optional(remark, ''),
  cue: v.optional(remark, ''),
});
export type Flag = v.InferOutput<typeof flagSchema> & {
  id: string;
  /** The note as data while it is in a suggestion's own words, to be said in another language; no file holds it. */
  noteMessage?: Message;
};

/** "Looked at and fine": the coach's tick on a criterion for some reps. */
export const tickSchema = v.strictObject({ clip: id, criterion: criterionIdSchema, reps: repsSchema });
export type Tick = v.InferOutput<typeof tickSchema>;

/** What is known of a clip's file. */
export const clipFactsSchema = v.strictObject({
  sha256: v.optional(v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/))),
  codec: v.string(),
  width: count(100_000),
  height: count(100_000),
  rotationDeg: v.picklist([0, 90, 180, 270]),
  frames: count(10_000_000),
  timeBase: timeBaseSchema,
  /** When its first frame appears, in media microseconds; absent in most clips, where that is 0. */
  startUs: v.optional(v.pipe(v.number(), v.safeInteger())),
  /** From its first frame to the end of its last. */
  durationUs: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
});
export type ClipFacts = v.InferOutput<typeof clipFactsSchema>;

export const clipSchema = v.strictObject({
  id,
  name,
  /** Where the footage is, relative to the review file; absent when the footage is elsewhere. */
  path: v.optional(v.pipe(v.string(), v.maxLength(4096))),
  facts: v.optional(clipFactsSchema),
  view: v.optional(v.nullable(viewSchema), null),
  /** Capture rate / playback rate: 8 for 240 frames per second stored as 30. */
  realTimeFactor: v.optional(v.pipe(finite, v.minValue(0.01), v.maxValue(100)), 1),
  loadKg: v.optional(v.pipe(finite, v.minValue(0), v.maxValue(1000))),
  reps: v.optional(v.pipe(v.array(repSchema), v.maxLength(mostInReview.reps)), []),
  /** What was drawn over the picture. */
  drawings: v.optional(v.pipe(v.array(drawingSchema), v.maxLength(mostDrawings))),
  /** What was stated about the clip so that it can be measured. */
  setUp: v.optional(setUpSchema),
  /** How the picture is shown; absent: as filmed. */
  framing: v.optional(framingSchema),
  /** The stretch of the footage that the clip shows; absent: all of it. Frames keep the footage's own numbers. */
  section: v.optional(sectionSchema),
  /**
   * The clip shows the set of another clip of its entry from another side, with the same reps under the same numbers: which, and how much
   * later a moment stands on this clip's clock than on that one's, in microseconds of real time.
   */
  sameSet: v.optional(v.strictObject({ clip: id, offsetUs: v.pipe(v.number(), v.safeInteger()) })),
});
export type Clip = v.InferOutput<typeof clipSchema>;

/** A grade set by hand: the coach's score in place of the arithmetic's, with the reason shown beside it. */
export const overrideSchema = v.strictObject({
  score: v.pipe(finite, v.minValue(0), v.maxValue(100)),
  reason: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(500)),
});
export type Override = v.InferOutput<typeof overrideSchema>;

export const entrySchema = v.strictObject({
  id,
  exercise: v.string(),
  plan: v.optional(planSchema),
  override: v.optional(overrideSchema),
  /** Sets done; without it, one set a clip. */
  setsDone: v.optional(v.pipe(count(50), v.minValue(1))),
  clips: v.pipe(v.array(clipSchema), v.maxLength(mostInReview.clips)),
  flags: v.optional(v.pipe(v.array(flagSchema), v.maxLength(mostInReview.flags)), []),
  ticks: v.optional(v.pipe(v.array(tickSchema), v.maxLength(mostInReview.ticks)), []),
});
/** One exercise within a session: plan, clips, and what was judged on them. */
export type Entry = Omit<v.InferOutput<typeof entrySchema>, 'flags'> & { flags: Flag[] };

/**
 * The versions of the format that are read (`oldNames.ts`); the last is written. Version 2 brought plans set by set and
 * equipment, version 3 the names `severity` and `stretchedEnd`, version 4 notes without a severity and how a clip is framed.
 */
export const formatVersions = [1, 2, 3, 4] as const;

/** The open review format: one session, whole. */
export const reviewSchema = v.strictObject({
  format: v.literal('rackside-review'),
  version: v.literal(4),
  rubric: v.optional(v.strictObject({ id: v.string(), version: count(1_000_000) })),
  /** Who speaks in the letter: a coach to a trainee, or the athlete to themselves. */
  voice: v.optional(v.picklist(['coach', 'self']), 'coach'),
  coach: v.optional(name),
  trainee: v.strictObject({
    name,
    goal: v.optional(goalSchema, 'growth'),
    experience: v.optional(v.picklist(['new', 'experienced']), 'experienced'),
    units: v.optional(v.picklist(['kg', 'lb']), 'kg'),
    minor: v.optional(v.boolean(), false),
    /** What the trainee has to train with; absent: everything. */
    equipment: v.optional(equipmentSchema),
  }),
  session: v.strictObject({
    id: v.optional(id, 'session'),
    title: v.optional(v.pipe(v.string(), v.maxLength(200)), ''),
    date: v.pipe(v.string(), v.isoDate()),
    notes: v.optional(remark, ''),
    /** What the trainee said about pain or injury, in their words; never judged. */
    painNote: v.optional(remark, ''),
    override: v.optional(overrideSchema),
    /** What was at hand on that day, where it was not the usual. */
    equipment: v.optional(equipmentSchema),
  }),
  entries: v.pipe(v.array(entrySchema), v.maxLength(mostInReview.entries)),
});
export type Review = Omit<v.InferOutput<typeof reviewSchema>, 'entries'> & { entries: Entry[] };

/** A review as the schema gives it: flags may still lack an id. */
export type ReviewAsRead = v.InferOutput<typeof reviewSchema>;
export type EntryAsRead = v.InferOutput<typeof entrySchema>;
export type FlagAsRead = v.InferOutput<typeof flagSchema>;
