import * as v from 'valibot';
import { languageSchema } from '../language/language.ts';
import { followedParts } from '../motion/measurement.ts';
import { plannedSetSchema } from '../review/plan.ts';
import { severitySchema } from '../rubric/rubric.ts';

const finite = v.pipe(v.number(), v.finite());
const whole = v.pipe(v.number(), v.integer(), v.minValue(0));
const score = v.pipe(finite, v.minValue(0), v.maxValue(100));
const share = v.pipe(finite, v.minValue(0), v.maxValue(1));
const seconds = v.pipe(finite, v.minValue(0));
const measured = v.nullable(v.strictObject({ value: finite, plusMinus: v.pipe(finite, v.minValue(0)) }));

const gradeSchema = v.strictObject({
  state: v.picklist(['graded', 'provisional', 'none']),
  /** Null where there is no grade. */
  letter: v.nullable(v.string()),
  score: v.nullable(score),
  /** Lowest and highest grade once everything is looked at. */
  range: v.nullable(v.strictObject({ low: score, high: score })),
  /** The coach's reason for a grade set by hand; null for the arithmetic's. */
  byHand: v.nullable(v.string()),
});

const exerciseSchema = v.strictObject({
  entry: v.string(),
  exercise: v.string(),
  name: v.string(),
  /** Sets done: as stated, else one a clip. */
  sets: whole,
  /** Planned sets in order, loads in kilograms; null without a plan. */
  planned: v.nullable(v.array(plannedSetSchema)),
  coverage: share,
  grade: gradeSchema,
  clips: v.array(
    v.strictObject({ id: v.string(), name: v.string(), loadKg: v.nullable(v.pipe(finite, v.minValue(0))) }),
  ),
});

const flagSchema = v.strictObject({
  id: v.string(),
  entry: v.string(),
  clip: v.string(),
  /** Media seconds; null where only a frame is known and the clip's time base is not. */
  atS: v.nullable(seconds),
  frame: v.nullable(whole),
  /** Null = the whole set. */
  reps: v.nullable(v.array(v.pipe(whole, v.minValue(1)))),
  criterion: v.string(),
  criterionName: v.string(),
  /** null = a plain note, which judges nothing; it has no strokes. */
  severity: v.nullable(severitySchema),
  strokes: v.nullable(v.picklist(['+', '|', '||', '|||', '||||'])),
  fault: v.nullable(v.string()),
  seen: v.string(),
  note: v.string(),
  cue: v.string(),
  /** Name of the file with the flag's still. */
  still: v.nullable(v.string()),
});

const measuredRepSchema = v.strictObject({
  rep: whole,
  startS: finite,
  endS: finite,
  eccentricS: measured,
  pauseStretchedS: measured,
  concentricS: measured,
  pauseShortenedS: measured,
  romM: measured,
  driftForwardM: measured,
  driftBackM: measured,
  meanConcentricMps: measured,
  peakConcentricMps: measured,
  depth: v.nullable(v.picklist(['reached', 'tooClose', 'short'])),
  depthM: measured,
});

/** The sheet as data, version 2. Names and texts are in its language. */
export const sheetSchema = v.strictObject({
  format: v.literal('rackside-sheet'),
  version: v.literal(2),
  language: languageSchema,
  trainee: v.string(),
  /** Null in a self-review. */
  coach: v.nullable(v.string()),
  date: v.pipe(v.string(), v.isoDate()),
  rubric: v.strictObject({ id: v.string(), name: v.string(), version: whole }),
  /** What the trainee said about pain, in their words; '' where nothing. */
  painNote: v.string(),
  /** What is to be heeded; it belongs beside whatever is shown of the sheet, and so does the closing line. */
  cautions: v.array(v.strictObject({ id: v.string(), topic: v.string(), text: v.string() })),
  closing: v.string(),
  grade: gradeSchema,
  exercises: v.array(exerciseSchema),
  /** In the order of exercises and clips, and by time within a clip. */
  flags: v.array(flagSchema),
  measures: v.array(
    v.strictObject({
      clip: v.string(),
      clipName: v.string(),
      exercise: v.string(),
      follows: v.optional(v.picklist(['disc', 'point', ...followedParts, 'nothing'])),
      /** `body`: lengths and speeds are about. */
      scaleFrom: v.optional(v.nullable(v.picklist(['disc', 'knownLength', 'body']))),
      reps: v.array(measuredRepSchema),
      speedLossPct: measured,
      warnings: v.array(v.string()),
    }),
  ),
});
export type SheetData = v.InferOutput<typeof sheetSchema>;
