/** The letter: what it says, planned from a review and its grade; and how it is said, from one catalogue of wording. */
export type {
  Change,
  EntryLine,
  FilmRequest,
  Keep,
  LetterPlan,
  Overall,
  Priority,
  SeenReps,
  Sighting,
} from './letterPlan.ts';
export { planLetter } from './planLetter.ts';
export { english } from './wording/english.ts';
export type { Counted, Messages, Tone, Wording } from './wording/wording.ts';
export { type LetterStyle, writeLetter } from './writeLetter.ts';
