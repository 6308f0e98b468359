import type { Suggestion } from '../../../engine/motion/measurement.ts';
import type { Flag } from '../../../engine/review/review.ts';
import type { SuggestionAnswerRow } from '../store/suggestionAnswers.ts';

/** What a clip's suggestions are held against. */
export type Judged = {
  readonly answers: readonly SuggestionAnswerRow[];
  readonly flags: readonly Pick<Flag, 'criterion' | 'fault' | 'weight' | 'reps'>[];
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

function isFlagged({ criterion, fault, weight, reps }: Suggestion, { flags, numberOf }: Judged): boolean {
  const same = flags.filter(
    (flag) => flag.criterion === criterion && flag.fault === fault && (flag.weight === 'keep') === (weight === 'keep'),
  );
  if (same.some((flag) => flag.reps === 'set')) return true;
  const flagged = new Set(same.flatMap((flag) => (flag.reps === 'set' ? [] : flag.reps)));
  const numbers = reps.map(numberOf);
  return numbers.length > 0 && numbers.every((number) => number !== undefined && flagged.has(number));
}
