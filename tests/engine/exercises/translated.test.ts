import { describe, expect, it } from 'vitest';
import { inItsWords, translated } from '../../../engine/exercises/translated.ts';
import type { Translation } from '../../../engine/language/language.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { entry, flag, review } from '../reviews.ts';

const german: Translation = {
  language: 'de',
  texts: { Squat: 'Kniebeuge', squat: 'falsch', Depth: 'Tiefe', 'Sit between your heels': 'Setz dich hinein' },
};
const english = {
  ...catalogueOf(exercise({ id: 'squat', name: 'Squat', pattern: 'squat' }), exercise({ id: 'curl', name: 'Curl' })),
  translations: [german],
};

describe('judging data in another language', () => {
  it('has its texts in that language, and stays English where there is no translation', () => {
    const names = translated(english, 'de').exercises.map(({ name }) => name);
    expect(names).toEqual(['Kniebeuge', 'Curl']);
  });

  it('keeps every name that other data is looked up by', () => {
    const [squat] = translated(english, 'de').exercises;
    expect(squat?.id).toBe('squat');
    expect(squat?.pattern).toBe('squat');
    expect(translated(english, 'de').rubric.criteria.map(({ id }) => id)).toEqual(
      english.rubric.criteria.map(({ id }) => id),
    );
  });

  it('knows its language, and is the same object when asked again', () => {
    expect(translated(english, 'de').language).toBe('de');
    expect(translated(english, 'de')).toBe(translated(english, 'de'));
    expect(translated(english, 'en')).toBe(english);
  });
});

describe('a review in the words of the data', () => {
  const cuesOf = (...cues: readonly string[]) =>
    inItsWords(
      review(entry({ flags: cues.map((cue, i) => flag({ id: `f${i}`, criterion: 'depth', weight: 'adjust', cue })) })),
      translated(english, 'de'),
    ).entries.flatMap(({ flags }) => flags.map(({ cue }) => cue));

  it("says the library's cues in them, and leaves what the coach wrote", () => {
    expect(cuesOf('Sit between your heels', 'Slower, please', '')).toEqual(['Setz dich hinein', 'Slower, please', '']);
  });

  it('takes no cue for one of the library because of how data is kept', () => {
    expect(cuesOf('constructor', 'toString', '__proto__')).toEqual(['constructor', 'toString', '__proto__']);
  });
});
