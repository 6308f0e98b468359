import type { Exercise } from '../exercises/exercise.ts';
import type { Flag } from '../review/review.ts';

/** Words that ask to hold the breath, or speak of one that is held, in English and in German. */
const holding =
  /\b(?:hold|holds|holding|held|keep|keeps|keeping|kept)\b[^.!?]{0,30}\bbreath|\bbreath\b[^.!?]{0,30}\b(?:held|kept|in)\b|\b(?:halt|halte|hältst|halten)\b[^.!?]{0,30}\b(?:luft|atem)\b|\b(?:luft|atem)\b[^.!?]{0,30}\b(?:anhalten|angehalten|anhältst|gehalten|halten|halte|halt)\b/i;

/** Whether words ask to hold the breath; generously, so that "don't hold your breath" counts too. */
export const speaksOfHeldBreath = (words: string): boolean => holding.test(words);

/**
 * Whether a remark is given with words that ask to hold the breath: the coach's own, or the cues and the drill of its
 * fault. `exercise` speaks English.
 */
export function asksToHoldBreath({ cue, note, fault, severity }: Flag, exercise: Exercise | undefined): boolean {
  if (speaksOfHeldBreath(cue) || speaksOfHeldBreath(note)) return true;
  if (severity === 'keep' || fault === null) return false;
  const known = exercise?.faults.find(({ id }) => id === fault);
  return known !== undefined && [known.cue.outcome, known.cue.body, known.drill].some(speaksOfHeldBreath);
}
