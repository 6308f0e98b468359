import type { Catalogue } from '../exercises/catalogue.ts';
import { textIn } from '../exercises/translation.ts';
import type { Flag, Review } from '../review/review.ts';
import { sayStoredMeasuring } from './sayMeasuring.ts';

/**
 * A review in the language of a catalogue: a cue in the library's words is in its words there too, and a note in a
 * suggestion's words says the same in that language. What the coach wrote stays as written.
 */
export function translatedReview(review: Review, { language = 'en', translations }: Catalogue): Review {
  if (language === 'en') return review;
  const texts = translations?.find((one) => one.language === language)?.texts ?? {};
  const noteOf = ({ note, noteMessage }: Flag): string =>
    (noteMessage && sayStoredMeasuring(noteMessage, language)) ?? note;
  const entries = review.entries.map((entry) => ({
    ...entry,
    flags: entry.flags.map((flag) => ({ ...flag, note: noteOf(flag), cue: textIn(texts, flag.cue) })),
  }));
  return { ...review, entries };
}
