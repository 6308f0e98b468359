import { readPainNote } from '../pain/painNote.ts';
import type { Review } from '../review/review.ts';
import { hasStop } from './cautionsDue.ts';

/** How hard a set may be asked for: the hardest, or one with reps left in reserve. */
export type FilmEffort = 'hardest' | 'easy';

/**
 * How hard a set a session may ask to be filmed. Never the hardest with pain, with something unsafe, of a beginner or of
 * a minor.
 */
export function filmEffort(review: Review): FilmEffort {
  const { minor, experience } = review.trainee;
  const careful =
    minor || experience === 'new' || hasStop(review) || readPainNote(review.session.painNote).kind === 'pain';
  return careful ? 'easy' : 'hardest';
}
