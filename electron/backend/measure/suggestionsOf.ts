import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import { suggest } from '../../../engine/motion/suggest/suggest.ts';
import type { Context } from '../context/context.ts';
import { findEntry, planOf } from '../store/entries.ts';
import { flagOf, listFlags } from '../store/flags.ts';
import type { RepRow } from '../store/reps.ts';
import { findSession } from '../store/sessions.ts';
import { listSuggestionAnswers } from '../store/suggestionAnswers.ts';
import { findTrainee, traineeOf } from '../store/trainees.ts';
import { sortByAnswer } from './answered.ts';
import type { ClipToMeasure } from './clipToMeasure.ts';
import { matchReps } from './repTimes.ts';

/** What a measurement of a clip proposes, under the rubric of its session: what waits for an answer, what was dismissed. */
export function suggestionsOf(context: Context, asked: ClipToMeasure, measurement: SetMeasurement | null) {
  const { clip, source, reps } = asked;
  if (!measurement || !source) return { open: [], dismissed: [] };
  const { reading } = context.library();
  const session = findSession(reading, clip.session_id);
  const { rubric } = context.catalogue(session.rubric_version);
  const suggestions = suggest({
    measurement,
    exercise: source.exercise,
    goal: traineeOf(findTrainee(reading, session.trainee_id)).goal,
    plan: planOf(findEntry(reading, clip.entry_id)) ?? null,
    rubricCriteria: rubric.criteria.map(({ id }) => id),
    view: clip.view,
  });
  const numbers = new Map(reps.map((rep, index) => [rep.id, index + 1]));
  return sortByAnswer(suggestions, {
    answers: listSuggestionAnswers(reading, clip.id),
    flags: listFlags(reading, clip.id).map((flag) => flagOf(reading, flag, numbers)),
    numberOf: repNumbers(asked, measurement),
  });
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
