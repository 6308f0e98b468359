import type { Override } from '../review/review.ts';
import { markFor } from '../rubric/mark.ts';
import type { Rubric } from '../rubric/rubric.ts';
import { cap, type Stop } from './arithmetic.ts';
import type { GradeState, Overridden } from './grade.ts';

/** Where a grade stands: what counts, and what the arithmetic says where the coach set another by hand. */
type Standing = { readonly state: GradeState; readonly override: Overridden | null };

/**
 * Sets the coach's grade in place of the computed one. It counts in full, whatever the coverage; only the cap of a stop
 * flag holds for it too: what is unsafe is taken out of the flags, not out of the grade.
 */
export function withOverride(
  computed: GradeState,
  override: Override | undefined,
  { rubric, most, stop }: { readonly rubric: Rubric; readonly most: number; readonly stop: Stop },
): Standing {
  if (override === undefined) return { state: computed, override: null };
  const marked = markFor(cap(override.score, most, stop), rubric);
  return { state: { kind: 'graded', ...marked }, override: { reason: override.reason, computed } };
}
