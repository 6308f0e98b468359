/** The letter: what it says, planned from a review and its grade; and how it is said, from one catalogue of wording. */

export { applyEdits, type EditableLine, type EditedLetter, type LetterEdit } from './edits.ts';
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
export { cautionsDue } from './planCautions.ts';
export { planLetter } from './planLetter.ts';
export type { Still, Stills } from './stills.ts';
export { type Counted, type Messages, type Tone, tones, type Wording } from './wording/wording.ts';
export { wordings } from './wording/wordings.ts';
export { type LetterStyle, writeLetter } from './writeLetter.ts';
