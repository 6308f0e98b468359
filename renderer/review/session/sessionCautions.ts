import type { Caution } from '../../../engine/exercises/caution.ts';
import type { Review } from '../../../engine/review/review.ts';

export type Applying = { readonly why: string; readonly cautions: readonly Caution[] };

/** The cautions a review must show: where pain was noted, and where a stop flag stands. */
export function sessionCautions(review: Review, cautions: readonly Caution[]): readonly Applying[] {
  const pain = review.session.painNote.trim() !== '';
  const stop = review.entries.some((entry) => entry.flags.some((flag) => flag.weight === 'stop'));
  const applying: Applying[] = [];
  if (pain) applying.push({ why: 'The trainee noted pain', cautions: cautions.filter((c) => c.applies === 'pain') });
  if (stop) applying.push({ why: 'A stop flag stands', cautions: cautions.filter((c) => c.applies === 'stop') });
  return applying;
}
