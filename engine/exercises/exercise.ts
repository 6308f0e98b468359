import * as v from 'valibot';
import { type CriterionId, criterionIdSchema } from '../rubric/rubric.ts';
import { equipmentItemSchema } from './equipment.ts';

const id = v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{1,59}$/));

export const goals = ['growth', 'strength', 'skill'] as const;
export const goalSchema = v.picklist(goals);
export type Goal = v.InferOutput<typeof goalSchema>;

/** Where the camera stands, relative to the plane of motion. */
export const views = ['side', 'front', 'rear', 'oblique'] as const;
export const viewSchema = v.picklist(views);
export type View = v.InferOutput<typeof viewSchema>;

/** A named way to miss a criterion, with all the letter needs to speak of it. */
export const faultSchema = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]{1,59}$/)),
  criterion: criterionIdSchema,
  /**
   * The criterion it belongs to instead where the rubric and the exercise judge that one; of several, ever narrower
   * ones, the last that is judged.
   */
  narrower: v.optional(v.union([criterionIdSchema, v.pipe(v.array(criterionIdSchema), v.minLength(1))])),
  /** It goes past its end or rests there, so that nothing which stops short of the end shows it. */
  past: v.optional(v.boolean()),
  /** A common fault that every exercise can show, or every one that needs an item of `with`. */
  everywhere: v.optional(v.boolean()),
  with: v.optional(v.array(equipmentItemSchema)),
  /** Id of the caution to print where it is found. */
  caution: v.optional(id),
  /** Short name for lists: "Short of depth". */
  name: v.string(),
  /** What is seen, as a clause that can follow "the film shows": lower case, no full stop. */
  seen: v.string(),
  /** Why it matters: one sentence, no promise, no fear. */
  why: v.string(),
  /** Source of the why, or "common practice". */
  source: v.string(),
  /** Cue worded to an outcome outside the body, at most eight words, and one directed to the body. */
  cue: v.strictObject({ outcome: v.string(), body: v.string() }),
  /** One sentence: what to practise. */
  drill: v.string(),
  /** One sentence: how we will know next time. */
  proof: v.string(),
  /** Severity proposed when the coach picks the fault. */
  usualSeverity: v.picklist(['prefer', 'adjust', 'correct', 'stop']),
});
export type Fault = v.InferOutput<typeof faultSchema>;

/** The narrower criteria that a fault belongs to, the narrowest last. */
export const narrowerOf = ({ narrower = [] }: Fault): readonly CriterionId[] => [narrower].flat();

const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
const seconds = v.pipe(v.number(), v.minValue(0), v.maxValue(60));
/** From-to in seconds. */
const secondsRange = v.strictTuple([seconds, seconds]);

/**
 * Target times of one repetition; `concentricS` null = as fast as control allows. A hold has no other phases: its
 * `pauseStretchedS` is how long it is held, and the rest is 0.
 */
const tempoTargetSchema = v.strictObject({
  eccentricS: secondsRange,
  pauseStretchedS: secondsRange,
  concentricS: v.nullable(secondsRange),
  pauseShortenedS: secondsRange,
});

const aliases = v.optional(v.array(v.string()), []);

/** A rung of a ladder: an exercise by id, or in words, and why it stands there; a plain id is read too. */
const rungSchema = v.union([
  v.strictObject({ exercise: v.string(), why: v.string() }),
  v.pipe(
    v.string(),
    v.transform((exercise) => ({ exercise, why: '' })),
  ),
]);

export const exerciseSchema = v.strictObject({
  id,
  name: v.string(),
  /** Everyday gym names by which people look for it, by language. */
  aliases: v.optional(v.strictObject({ en: aliases, de: aliases })),
  /** The movement family whose faults it shares. */
  pattern: v.string(),
  implement: v.string(),
  /** What must be at hand for it. */
  needs: v.optional(v.array(equipmentItemSchema)),
  /** Few repetitions a set are its nature: a jump and a slow way down, a kneeling hamstring lowering. */
  lowRepByDesign: v.optional(v.boolean()),
  /** More than one joint does the work. */
  compound: v.boolean(),
  beginsWith: v.picklist(['eccentric', 'concentric', 'hold']),
  /** Where the target muscles are longest and shortest, in words: "bottom, deepest point". */
  stretchedEnd: v.string(),
  shortenedEnd: v.string(),
  /** Which of the two ends is physically lower in the picture. */
  lowerEnd: v.picklist(['stretched', 'shortened', 'neither']),
  trackedPoint: v.picklist(['disc', 'bar-end', 'implement', 'hip', 'head', 'wrist', 'none']),
  /** The part of the body that rises and sinks with the load, where it isn't the one that pattern and tracked point suggest. */
  movesWith: v.optional(v.picklist(['hands', 'shoulders', 'hips', 'head', 'legs'])),
  bestView: viewSchema,
  /** Which criteria each view can judge; a view that is missing judges nothing. */
  judgedFrom: v.record(viewSchema, v.array(criterionIdSchema)),
  /** Criteria with their share of the exercise score; shares add up to 1. */
  criteria: v.array(v.strictObject({ id: criterionIdSchema, share })),
  /**
   * Criteria that it is judged by too where the rubric knows them, each with its share and the views that can judge it.
   * The share is taken from one criterion, or else from all the others in proportion.
   */
  alsoJudged: v.optional(
    v.array(
      v.strictObject({
        id: criterionIdSchema,
        share,
        takenFrom: v.optional(criterionIdSchema),
        /** The criterion of this exercise that covers it where the rubric doesn't know it, if not the rubric's own. */
        partOf: v.optional(criterionIdSchema),
        from: v.pipe(v.array(viewSchema), v.minLength(1)),
      }),
    ),
  ),
  targets: v.strictObject({
    tempo: v.strictObject({ growth: tempoTargetSchema, strength: tempoTargetSchema, skill: tempoTargetSchema }),
    /** The rule a rep must meet at its far end, in words. */
    depth: v.string(),
    path: v.strictObject({
      shape: v.picklist(['vertical', 'rail', 'curve', 'arc', 'horizontal', 'free']),
      toleranceM: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
      /**
       * Lean of a guided rail from upright, in degrees, as it usually is; the coach may know better of a machine.
       * Positive: the bar moves towards the lifter's back as it lowers; negative: towards the front; 0: upright.
       */
      railTiltDeg: v.optional(v.pipe(v.number(), v.minValue(-15), v.maxValue(15))),
    }),
    /** Change of the head against the trunk, from set-up, that is still fine, in degrees. */
    headDeg: v.number(),
    spine: v.string(),
  }),
  /** Where in the range the load is hardest, by muscle length. */
  hardestAt: v.picklist(['stretched', 'middle', 'shortened', 'even']),
  /** The set-up ends the range before the stretched end. */
  rangeCut: v.optional(
    v.strictObject({
      /** What ends it, as the start of a clause: "the floor". */
      by: v.string(),
      /** The exercise that goes further. */
      fuller: v.optional(id),
      /** How the same exercise is set up to go further: one sentence. */
      remedy: v.optional(v.string()),
      /** The faults that show the cut on film, where the set-up need not make it. */
      shownBy: v.optional(v.array(v.string())),
    }),
  ),
  ladder: v.strictObject({
    /** Easier and harder exercises, the best next step first. */
    easier: v.array(rungSchema),
    harder: v.array(rungSchema),
    /** Variants that suit the goal better, with why; most preferred first. */
    betterSuited: v.array(v.strictObject({ exercise: v.string(), why: v.string() })),
  }),
  /** Those that do the work, the prime mover first; and those that help. */
  muscles: v.strictObject({ direct: v.array(v.string()), indirect: v.array(v.string()) }),
  /** Ids into the cautions. */
  cautions: v.array(v.string()),
  /** Ids of faults of its pattern, or common ones, that can't happen in it or that it has by another name. */
  omits: v.optional(v.array(v.string())),
  /** Faults of its own, beyond those of its pattern. */
  faults: v.array(faultSchema),
});
export type ExerciseEntryData = v.InferOutput<typeof exerciseSchema>;

/** One file of the exercise library: a movement pattern, the faults its exercises share, the exercises. */
export const exerciseFileSchema = v.strictObject({
  pattern: v.string(),
  faults: v.array(faultSchema),
  exercises: v.array(exerciseSchema),
});
export type ExerciseFile = v.InferOutput<typeof exerciseFileSchema>;

/** An exercise as the rest of the product sees it: its pattern's faults included. */
export type Exercise = ExerciseEntryData;
