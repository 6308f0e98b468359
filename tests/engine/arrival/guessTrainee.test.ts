import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guessTrainee } from '../../../engine/arrival/guessTrainee.ts';

const trainees = [
  { id: 'mira', name: 'Mira Holt' },
  { id: 'jo', name: 'Jo Bergström' },
  { id: 'jo2', name: 'Jo Müller' },
  { id: 'an', name: 'An' },
];

const guess = (folders: readonly string[], { name = 'IMG_1.mov', choice = {}, lastUsed = 'an' } = {}) => {
  const made = guessTrainee({ folders, name, choice }, { trainees, lastUsed });
  return made === null ? null : [made.value.kind === 'known' ? made.value.traineeId : made.value.name, made.basis];
};

describe('whose clip it is', () => {
  it('is told by the folder, whatever its case, accents and order of words', () => {
    expect(guess(['Mira Holt'])).toEqual(['mira', 'folder']);
    expect(guess(['HOLT, mira'])).toEqual(['mira', 'folder']);
    expect(guess(['bergstrom-jo'])).toEqual(['jo', 'folder']);
    expect(guess(['Jo Bergstroem'])).toEqual(['jo', 'folder']);
    expect(guess(['Mueller_Jo'])).toEqual(['jo2', 'folder']);
  });

  it('is told by a folder that says more, or less, as long as it means one only', () => {
    expect(guess(['Mira Holt week 3'])).toEqual(['mira', 'folder']);
    expect(guess(['2026-11-28 mira'])).toEqual(['mira', 'folder']);
    expect(guess(['holt'])).toEqual(['mira', 'folder']);
  });

  it('is told by the innermost folder that names somebody', () => {
    expect(guess(['Mira Holt', 'Jo Müller', 'squats'])).toEqual(['jo2', 'folder']);
    expect(guess(['Mira Holt', 'squats', '28 Nov'])).toEqual(['mira', 'folder']);
  });

  it('is whoever was used last where the folder could mean two, or nobody', () => {
    expect(guess(['Jo'])).toEqual(['an', 'lastUsed']);
    expect(guess(['DCIM'])).toEqual(['an', 'lastUsed']);
    // "An" is a word of "Andrea", not the name.
    expect(guess(['Andrea'])).toEqual(['an', 'lastUsed']);
    expect(guess(['DCIM'], { lastUsed: 'gone' })).toBeNull();
  });

  it('is told by the file where it holds a whole name', () => {
    expect(guess(['Downloads'], { name: 'mira_holt_squat_1.mp4' })).toEqual(['mira', 'fileName']);
    expect(guess(['Downloads'], { name: 'mira_squat_1.mp4' })).toEqual(['an', 'lastUsed']);
  });

  it('is who was chosen, known or new; one who is gone was not', () => {
    expect(guess(['Mira Holt'], { choice: { traineeId: 'jo' } })).toEqual(['jo', 'chosen']);
    expect(guess(['Mira Holt'], { choice: { newTrainee: 'Ada Lund' } })).toEqual(['Ada Lund', 'chosen']);
    expect(guess(['Mira Holt'], { choice: { traineeId: 'gone' } })).toEqual(['mira', 'folder']);
  });

  it('is the only one there is, and nobody where nobody is', () => {
    const one = trainees.slice(0, 1);
    const clip = { folders: ['DCIM'], name: 'a.mp4', choice: {} };
    expect(guessTrainee(clip, { trainees: one, lastUsed: null })).toMatchObject({ basis: 'only' });
    expect(guessTrainee(clip, { trainees: [], lastUsed: null })).toBeNull();
  });

  it('never depends on the order, case or accents of a name’s words', () => {
    const shuffledWords = fc.constantFrom(...trainees.filter(({ name }) => name.includes(' '))).chain((trainee) =>
      fc.record({
        id: fc.constant(trainee.id),
        words: fc.shuffledSubarray(trainee.name.split(' '), { minLength: 2 }),
        upper: fc.boolean(),
        by: fc.constantFrom(' ', '_', '-', ', '),
      }),
    );
    fc.assert(
      fc.property(shuffledWords, ({ id, words, upper, by }) => {
        const folder = words.join(by).normalize('NFD').replace(/\p{M}/gu, '');
        expect(guess([upper ? folder.toUpperCase() : folder])).toEqual([id, 'folder']);
      }),
    );
  });
});
