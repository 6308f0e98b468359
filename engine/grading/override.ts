import type { Override } from '../review/review.ts';
import { markFor } from '../rubric/mark.ts';
import type { Rubric } from '../rubric/rubric.ts';
import { cap, type Stop } from './arithmetic.ts';
import type { GradeState, Overridden } from './grade.ts';

/** The grade that counts, and the computed one where the coach set another by hand. */
type Standing = { readonly state: GradeState; readonly override: Overridden | null };

/**
 * Replaces the computed grade by the coach's. It counts in full, whatever the coverage. The cap of a stop flag still
 * holds: to lift it, the flag has to go.
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
