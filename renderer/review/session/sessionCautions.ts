import type { Caution } from '../../../engine/exercises/caution.ts';
import type { Review } from '../../../engine/review/review.ts';

export type Applying = { readonly why: string; readonly words: string; readonly cautions: readonly Caution[] };

/** The cautions a review must show: where pain was noted, in the trainee's words, and where a stop flag stands. */
export function sessionCautions(review: Review, cautions: readonly Caution[]): readonly Applying[] {
  const painNote = review.session.painNote.trim();
  const stop = review.entries.some((entry) => entry.flags.some((flag) => flag.weight === 'stop'));
  const applying: Applying[] = [];
  if (painNote !== '') {
    const pain = cautions.filter((caution) => caution.applies === 'pain');
    applying.push({ why: 'The trainee noted pain', words: `“${painNote}”`, cautions: pain });
  }
  if (stop) {
    const stopping = cautions.filter((caution) => caution.applies === 'stop');
    applying.push({ why: 'A stop flag stands', words: 'Say so before anything else.', cautions: stopping });
  }
  return applying;
}
