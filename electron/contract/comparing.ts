import * as v from 'valibot';
import type { ReviewAgreement } from '../../engine/agreement/compareReviews.ts';
import type { Caution } from '../../engine/exercises/catalogue.ts';
import { languageSchema } from '../../engine/language/language.ts';
import type { FaultChange } from '../../engine/progress/faultChanges.ts';
import { act, read } from './kinds.ts';
import { engineType, id, keptDate, name } from './shapes.ts';

const agreement = v.strictObject({
  agreement: engineType<ReviewAgreement>(),
  /** Where the differing moments lie in the first session: its rubric version, and how its clips are called. */
  rubricVersion: v.number(),
  clips: v.array(v.strictObject({ id, name: v.string() })),
});

/** One session as a point of a trainee's history. */
export const historyPointSchema = v.strictObject({
  sessionId: id,
  date: keptDate,
  title: v.string(),
  /** Letter and score of the session's grade; null without one. */
  grade: v.nullable(v.strictObject({ mark: v.string(), score: v.number() })),
  criteria: v.array(v.strictObject({ criterion: v.string(), score: v.number() })),
  changes: v.array(engineType<FaultChange>()),
});
export type HistoryPoint = v.InferOutput<typeof historyPointSchema>;

/** A review file is never longer than this, in characters. */
export const mostReviewText = 5_000_000;

/** Requests that lay one judgement beside another: the second look, agreement, a trainee's history. */
export const comparingRequests = {
  /** A new session with the same clips and reps and nothing judged, to be judged blind. */
  /** A second look at a session; its title is in the language. */
  'secondLook.start': act({
    params: v.strictObject({ sessionId: id, language: v.optional(languageSchema) }),
    result: v.strictObject({ sessionId: id }),
  }),
  /** The newest second look at a session: under way until all that was judged first was looked at again; null without. */
  'secondLook.get': read({
    params: v.strictObject({ sessionId: id }),
    result: v.strictObject({
      look: v.nullable(v.strictObject({ sessionId: id, state: v.picklist(['underWay', 'finished']) })),
    }),
  }),
  /** How far the first judgement of a session and its second look agree. */
  'secondLook.compare': read({ params: v.strictObject({ sessionId: id }), result: agreement }),
  /** How far two sessions of the same clips agree, paired by the clips' files, else by their order. */
  'agreement.compare': read({ params: v.strictObject({ firstId: id, secondId: id }), result: agreement }),
  /** The same of a session and another coach's review file, which stays out of the library. */
  'agreement.compareFile': read({
    params: v.strictObject({ sessionId: id, name, text: v.pipe(v.string(), v.maxLength(mostReviewText)) }),
    result: agreement,
  }),
  'trainees.history': read({
    params: v.strictObject({ traineeId: id }),
    result: v.strictObject({
      points: v.array(historyPointSchema),
      /** Cautions that the trainee's latest exercises, age or pain notes call for. */
      cautions: v.array(engineType<Caution>()),
      rubricVersion: v.number(),
    }),
  }),
  /** How fast a trainee moved which load, set by set, the oldest first: exercises done with two loads or more. */
  'trainees.speeds': read({
    params: v.strictObject({ traineeId: id }),
    result: v.array(
      v.strictObject({
        clipId: id,
        sessionId: id,
        date: keptDate,
        exercise: v.string(),
        loadKg: v.number(),
        /** Mean concentric speed of the set's fastest rep, in metres a second. */
        fastestMps: v.number(),
      }),
    ),
  }),
} as const;
