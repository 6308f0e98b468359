import type { CriterionId } from '../../../engine/rubric/rubric.ts';

const atLongEnd: ReadonlySet<CriterionId> = new Set(['depth', 'pauses']);

/** Whether a criterion is best looked at where the rep turns round, not where it starts. */
export const judgedAtLongEnd = (criterion: CriterionId): boolean => atLongEnd.has(criterion);
