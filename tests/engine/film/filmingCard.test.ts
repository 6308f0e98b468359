import { describe, expect, it } from 'vitest';
import { toText } from '../../../engine/document/toText.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { type CardContent, filmingCard } from '../../../engine/film/filmingCard.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';

const catalogue = shippedUnder(2);
const cardOf = (exerciseIds: readonly string[], rest: Partial<CardContent> = {}) =>
  filmingCard({ exerciseIds, date: '2026-01-01', effort: 'hardest', ...rest }, catalogue);

describe('the page on how to film', () => {
  it('asks for three to five metres, sixty frames, the hardest set and nobody else (common practice, no source)', () => {
    const text = toText(cardOf([]));
    for (const words of [/Three to five metres/, /Sixty frames/, /hardest set/, /Nobody else/])
      expect(text).toMatch(words);
  });

  // What a coach says before anybody films: common practice, no source; guardians: Lloyd et al. 2014 (from memory).
  it.each([
    [
      'en',
      [/walkway/, /bar’s path/, /Safety arms/, /spotter/, /Not alone near failure/, /hurts/, /guardian’s consent/],
    ],
    [
      'de',
      [/Durchgang/, /Weg der Stange/, /Sicherheitsablagen/, /sichert/, /Nie allein/, /wehtut/, /Sorgeberechtigten/],
    ],
  ] as const)('says in %s first how nobody gets hurt', (language, words) => {
    const text = toText(
      filmingCard({ exerciseIds: [], date: '2026-01-01', effort: 'easy' }, translated(catalogue, language)),
    );
    for (const said of words) expect(text).toMatch(said);
    expect(text.search(words[0])).toBeLessThan(text.search(/Stand the phone|Stell das Handy/));
  });

  it('asks for the hardest set only where it may, and for none where none may be filmed', () => {
    expect(toText(cardOf([], { effort: 'easy' }))).toMatch(/An easy set/);
    for (const effort of ['easy', null] as const) expect(toText(cardOf([], { effort }))).not.toMatch(/hardest/i);
    expect(toText(cardOf([], { effort: null }))).not.toMatch(/easy set/);
  });

  // Hips at the bottom for squats and pulls from the floor, the bench for lying lifts, the chest for rows and presses:
  // common practice, no source.
  it.each([
    ['back-squat', 'hip'],
    ['deadlift', 'hip'],
    ['push-up', 'hip'],
    ['bench-press', 'bench'],
    ['overhead-press', 'chest'],
    ['bent-over-row', 'chest'],
  ] as const)('sets the lens of %s at the %s', (id, height) => {
    const words = { hip: 'height of the hips', bench: 'height of the bench', chest: 'height of the chest' }[height];
    expect(toText(cardOf([id]))).toContain(words);
  });

  it('says each exercise once, and leaves out what the library does not hold', () => {
    const { blocks } = cardOf(['back-squat', 'back-squat', 'nowhere']);
    expect(blocks.filter(({ kind }) => kind === 'paragraph')).toHaveLength(1);
  });

  it('speaks German throughout', () => {
    const german = toText(
      filmingCard(
        { exerciseIds: catalogue.exercises.map(({ id }) => id), date: '2026-01-01', effort: 'easy' },
        translated(catalogue, 'de'),
      ),
    );
    expect(german).not.toMatch(/\b(the|phone|lens|from|your|hold)\b/i);
  });
});
