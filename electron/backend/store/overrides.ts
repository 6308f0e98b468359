import type { Override } from '../../../engine/review/review.ts';
import type { Row } from './journaledTables.ts';

/** The columns of a grade set by hand; both null where the arithmetic's grade counts. */
export type OverrideColumns = { readonly override_score: number | null; readonly override_reason: string | null };

/** The columns of a grade set by hand; null or undefined for none. */
export function overrideColumns(override: Override | null | undefined): Row & OverrideColumns {
  return { override_score: override?.score ?? null, override_reason: override?.reason ?? null };
}

/** The grade set by hand that a row holds, as the review format has it. */
export function overrideOf({ override_score, override_reason }: OverrideColumns): { override?: Override } {
  if (override_score === null || override_reason === null) return {};
  return { override: { score: override_score, reason: override_reason } };
}
