import { type Catalogue, textIn } from '../exercises/catalogue.ts';
import type { SetMeasurement } from '../motion/measurement.ts';
import type { Clip, ClipFacts, Flag, Review } from '../review/review.ts';
import { sayStoredMeasuring } from '../wording/sayMeasuring.ts';

/** What opening the clips of a session has told, by the clip's id. */
export type Footage = {
  readonly facts: ReadonlyMap<string, ClipFacts>;
  readonly measures: ReadonlyMap<string, SetMeasurement>;
};

/** The review with facts of its files where it has none; the same object where it has them all. */
export function withFacts(review: Review, facts: Footage['facts']): Review {
  const isMissing = (clip: Clip) => clip.facts === undefined && facts.has(clip.id);
  if (!review.entries.some(({ clips }) => clips.some(isMissing))) return review;
  return {
    ...review,
    entries: review.entries.map((entry) => ({
      ...entry,
      clips: entry.clips.map((clip) => {
        const known = clip.facts ?? facts.get(clip.id);
        return known === undefined ? clip : { ...clip, facts: known };
      }),
    })),
  };
}

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
