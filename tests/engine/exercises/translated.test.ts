import { describe, expect, it } from 'vitest';
import { type Translation, translated } from '../../../engine/exercises/catalogue.ts';
import { catalogueOf, exercise } from '../catalogue.ts';

const german: Translation = {
  language: 'de',
  texts: { Squat: 'Kniebeuge', squat: 'falsch', Depth: 'Tiefe' },
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
