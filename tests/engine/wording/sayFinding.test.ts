import { describe, expect, it } from 'vitest';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { programmeFindings } from '../../../engine/programme/findings.ts';
import { sayFinding, sayFindings } from '../../../engine/wording/sayGrade.ts';
import { withinSentence } from '../../../engine/wording/wordings.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { planned, sessionOf, sets } from '../programme/sessions.ts';

describe('the name of an exercise inside a sentence', () => {
  it.each([
    ['Romanian deadlift', 'Romanian deadlift'],
    ['Dumbbell Romanian deadlift', 'dumbbell Romanian deadlift'],
    ['T-bar row', 'T-bar row'],
    ['EZ-bar curl', 'EZ-bar curl'],
    ['45-degree back raise', '45-degree back raise'],
    ['Hip thrust', 'hip thrust'],
  ])('%s: %s', (name, inside) => {
    expect(withinSentence('en', name)).toBe(inside);
  });
});

const arms = sessionOf(
  {},
  ...['standing-curl', 'hammer-curl', 'triceps-pushdown', 'overhead-triceps-extension'].map((id) =>
    planned(id, sets(4, 10)),
  ),
);

describe('several findings one after the other', () => {
  it('say no reason and no sentence of advice twice', () => {
    const [biceps, triceps] = sayFindings(programmeFindings(arms, shippedUnder(3)), 'en');
    expect(biceps?.why).not.toBe('');
    expect(triceps?.why).toBe('');
    expect(biceps?.suggestion).toContain('add one set at a time');
    expect(triceps?.suggestion).toBe(
      'Halve them: triceps pushdown from 4 to 2; overhead triceps extension from 4 to 2.',
    );
  });
});

it('leaves English names of two nouns as they are in German', () => {
  for (const name of ['Face Pull', 'Suitcase Carry', 'Glute Bridge', 'Reverse Flys']) {
    expect(withinSentence('de', name)).toBe(name);
  }
  expect(withinSentence('de', 'Einbeiniges rumänisches Kreuzheben')).toBe('einbeiniges rumänisches Kreuzheben');
  expect(withinSentence('de', 'Negativer Klimmzug')).toBe('negativer Klimmzug');
});

it('gives German adjectives a small letter inside a sentence, and nouns none', () => {
  const held = (id: string) => planned(id, sets(3, 10, { tempo: '2-0-1-2' }));
  const session = sessionOf({}, held('pull-up'), held('bent-over-row'));
  const [finding] = programmeFindings(session, translated(shippedUnder(3), 'de'));
  expect(finding && sayFinding(finding, 'de').what).toBe(
    'Klimmzug und vorgebeugtes Rudern: bis zu 2 Sekunden in der Verkürzung gehalten und kürzer in der Dehnung.',
  );
});
