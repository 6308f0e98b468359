import { describe, expect, it } from 'vitest';
import { toText } from '../../../engine/document/toText.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { filmingCard } from '../../../engine/film/filmingCard.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';

const catalogue = shippedUnder(2);
describe('the filming card', () => {
  it('asks for three to five metres, sixty frames, the hardest set and nobody else (common practice, no source)', () => {
    const text = toText(filmingCard([], catalogue, '2026-01-01'));
    for (const words of [/Three to five metres/, /Sixty frames/, /hardest set/, /Nobody else/])
      expect(text).toMatch(words);
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
    expect(toText(filmingCard([id], catalogue, '2026-01-01'))).toContain(words);
  });

  it('says each exercise once, and leaves out what the library does not hold', () => {
    const { blocks } = filmingCard(['back-squat', 'back-squat', 'nowhere'], catalogue, '2026-01-01');
    expect(blocks.filter(({ kind }) => kind === 'paragraph')).toHaveLength(1);
  });

  it('speaks German throughout', () => {
    const german = toText(
      filmingCard(
        catalogue.exercises.map(({ id }) => id),
        translated(catalogue, 'de'),
        '2026-01-01',
      ),
    );
    expect(german).not.toMatch(/\b(the|phone|lens|from|your|hold)\b/i);
  });
});
