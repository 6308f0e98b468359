import type { Review } from '../review/review.ts';

/** After this many letters with the same cue it is the cue that changes (common practice, no source). */
const mostLetters = 3;

/** Whether a fault was flagged in each of the trainee's last three sessions, so that its cue has had its chance. */
export function cueIsWorn(fault: string, earlier: readonly Review[]): boolean {
  const last = earlier.slice(-mostLetters);
  return (
    last.length === mostLetters &&
    last.every((review) =>
      review.entries.some(({ flags }) => flags.some((flag) => flag.fault === fault && flag.weight !== 'keep')),
    )
  );
}
