import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import { type KnownMisses, missedIn, saidAsKnown } from '../../../engine/motion/suggest/missedBefore.ts';
import { suggest } from '../../../engine/motion/suggest/suggest.ts';
import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import type { Flag } from '../../../engine/review/review.ts';
import type { Context } from '../context/context.ts';
import { findEntry, planOf } from '../store/entries.ts';
import { flagOf, listFlags } from '../store/judgements.ts';
import { listDismissedBefore, listSuggestionAnswers, type SuggestionAnswerRow } from '../store/measuring.ts';
import type { RepRow } from '../store/reps.ts';
import { findSession } from '../store/sessions.ts';
import { findTrainee, traineeOf } from '../store/trainees.ts';
import type { ClipToMeasure } from './clipToMeasure.ts';
import { matchReps } from './measuredReps.ts';
import { unaidedMeasurementOfClip } from './measurementOfClip.ts';

/** The suggestions of a clip's measurement under its session's rubric: those that wait for an answer, and those dismissed. */
export function suggestionsOf(context: Context, asked: ClipToMeasure, measurement: SetMeasurement | null) {
  const { clip, source, reps } = asked;
  if (!measurement || !source) return { open: [], dismissed: [] };
  const { reading } = context.library();
  const session = findSession(reading, clip.session_id);
  const { rubric } = context.catalogue(session.rubric_version);
  const found = suggest({
    measurement,
    exercise: source.exercise,
    goal: traineeOf(findTrainee(reading, session.trainee_id)).goal,
    plan: planOf(findEntry(reading, clip.entry_id)) ?? null,
    rubricCriteria: rubric.criteria.map(({ id }) => id),
    view: clip.view,
  });
  const suggestions = saidAsKnown(found, knownMisses(context, asked, measurement));
  const numbers = new Map(reps.map((rep, index) => [rep.id, index + 1]));
  return sortByAnswer(suggestions, {
    answers: listSuggestionAnswers(reading, clip.id),
    flags: listFlags(reading, clip.id).map((flag) => flagOf(reading, flag, numbers)),
    numberOf: repNumbers(asked, measurement),
  });
}

/**
 * What is known against a clip's numbers. A number missed its ± before where
 * - a person set an edge or clicked the depth of a rep of this clip, and the measure that comes of it lies outside the ± of the one
 *   without it (`missedIn`); or
 * - the same suggestion lies dismissed on another clip of the same exercise and trainee, in one of the twelve newest sessions
 *   (`listDismissedBefore`). Brought back, it counts no more.
 * A second look and the session that it looks at again know nothing of each other: neither's answers count for the other.
 */
function knownMisses(context: Context, asked: ClipToMeasure, measurement: SetMeasurement): KnownMisses {
  const library = context.library();
  const unaided = unaidedMeasurementOfClip(library, asked);
  return {
    missed: missedIn(unaided?.reps ?? [], measurement.reps),
    dismissed: new Set(listDismissedBefore(library.reading, asked.clip)),
  };
}

/** The clip's number of each measured rep: the marked rep that it shares its time with. */
export function repNumbers(
  { reps, source }: ClipToMeasure,
  measurement: SetMeasurement,
): (index: number) => number | undefined {
  const matches: ReadonlyMap<number, RepRow> = source ? matchReps(measurement.reps, reps, source.table) : new Map();
  return (index) => {
    const row = matches.get(index);
    return row && reps.findIndex(({ id }) => id === row.id) + 1;
  };
}

/** What a clip's suggestions are held against. */
export type Judged = {
  readonly answers: readonly SuggestionAnswerRow[];
  readonly flags: readonly Pick<Flag, 'criterion' | 'fault' | 'severity' | 'reps'>[];
  /** The clip's number of a measured rep; undefined when the clip has no such rep. */
  readonly numberOf: (measuredIndex: number) => number | undefined;
};

/**
 * Suggestions by what became of them. One is answered as long as the flag that it became is there, or any flag says the
 * same of all its reps: the person has judged it, with or without the suggestion.
 */
export function sortByAnswer(suggestions: readonly Suggestion[], judged: Judged) {
  const answerOf = (suggestion: Suggestion) =>
    judged.answers.find((answer) => answer.suggestion_id === suggestion.id)?.answer;
  return {
    open: suggestions.filter((each) => answerOf(each) === undefined && !isFlagged(each, judged)),
    dismissed: suggestions.filter((each) => answerOf(each) === 'dismissed'),
  };
}

function isFlagged({ criterion, fault, severity, reps }: Suggestion, { flags, numberOf }: Judged): boolean {
  const same = flags.filter(
    (flag) =>
      flag.criterion === criterion && flag.fault === fault && (flag.severity === 'keep') === (severity === 'keep'),
  );
  if (same.some((flag) => flag.reps === 'set')) return true;
  const flagged = new Set(same.flatMap((flag) => (flag.reps === 'set' ? [] : flag.reps)));
  const numbers = reps.map(numberOf);
  return numbers.length > 0 && numbers.every((number) => number !== undefined && flagged.has(number));
}
