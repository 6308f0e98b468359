import { describe, expect, it } from 'vitest';
import { translatedReview } from '../../../engine/edition/shownReview.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import type { Message } from '../../../engine/message/message.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { entry, flag, review } from '../reviews.ts';

const english = {
  ...catalogueOf(exercise({ id: 'squat', name: 'Squat', pattern: 'squat' })),
  translations: [{ language: 'de' as const, texts: { 'Sit between your heels': 'Setz dich hinein' } }],
};

describe('cues in the words of the data', () => {
  const cuesOf = (...cues: readonly string[]) =>
    translatedReview(
      review(
        entry({ flags: cues.map((cue, i) => flag({ id: `f${i}`, criterion: 'depth', severity: 'adjust', cue })) }),
      ),
      translated(english, 'de'),
    ).entries.flatMap(({ flags }) => flags.map(({ cue }) => cue));

  it("says the library's cues in them, and leaves what the coach wrote", () => {
    expect(cuesOf('Sit between your heels', 'Slower, please', '')).toEqual(['Setz dich hinein', 'Slower, please', '']);
  });

  it('takes no cue for one of the library because of how data is kept', () => {
    expect(cuesOf('constructor', 'toString', '__proto__')).toEqual(['constructor', 'toString', '__proto__']);
  });
});

describe('notes in the words of the data', () => {
  const message: Message = {
    id: 'turnsRound',
    values: { rep: 2, times: 3, where: 'bottom', alsoCount: 0, alsoReps: [] },
  };
  const note = 'Rep 2 turns round 3 times at the bottom; once is enough.';
  const noteIn = (language: 'en' | 'de', noteMessage?: Message) => {
    const noted = { ...flag({ criterion: 'depth', severity: 'adjust', note }), ...(noteMessage && { noteMessage }) };
    return translatedReview(review(entry({ flags: [noted] })), translated(english, language)).entries[0]?.flags[0]
      ?.note;
  };

  it('say in them what a suggestion said', () => {
    expect(noteIn('de', message)).toBe('Wiederholung 2: Umkehr unten 3-mal; einmal genügt.');
    expect(noteIn('en', message)).toBe(note);
  });

  it('stay as they are where the coach wrote them, or where nobody knows the message', () => {
    expect(noteIn('de')).toBe(note);
    expect(noteIn('de', { id: 'somethingNewer', values: {} })).toBe(note);
  });
});
