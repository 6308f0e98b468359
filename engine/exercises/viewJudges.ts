import type { CriterionId } from '../rubric/rubric.ts';
import type { Exercise, View } from './exercise.ts';

/** What a view can judge of an exercise and what it can't, in the order of the exercise's criteria. */
export function viewJudges(
  { criteria, judgedFrom }: Pick<Exercise, 'criteria' | 'judgedFrom'>,
  view: View,
): { readonly judged: readonly CriterionId[]; readonly not: readonly CriterionId[] } {
  const ids = criteria.map(({ id }) => id);
  const shown = judgedFrom[view] ?? [];
  return { judged: ids.filter((id) => shown.includes(id)), not: ids.filter((id) => !shown.includes(id)) };
}
