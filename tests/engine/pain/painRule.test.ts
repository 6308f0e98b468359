import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import { findExercise } from '../../../engine/exercises/catalogue.ts';
import { bodyAreas } from '../../../engine/pain/bodyAreas.ts';
import { loadedAreas } from '../../../engine/pain/loadedAreas.ts';
import { readPainNote } from '../../../engine/pain/painNote.ts';
import { isHeldByPain } from '../../../engine/pain/painRule.ts';

const catalogue = loadCatalogue(path.resolve(import.meta.dirname, '../../..'));
const held = (note: string, id: string): boolean => isHeldByPain(readPainNote(note), findExercise(catalogue, id));

describe('which lifts pain holds back', () => {
  // Which joints and muscles a lift loads: common practice.
  it.each([
    [
      'Knee 4/10',
      ['back-squat', 'split-squat', 'leg-press', 'leg-extension', 'step-up'],
      ['bench-press', 'pull-up', 'standing-curl'],
    ],
    [
      'low back 3/10',
      ['deadlift', 'romanian-deadlift', 'bent-over-row', 'back-squat', 'back-extension'],
      ['bench-press', 'leg-extension', 'lateral-raise', 'chest-supported-row'],
    ],
    [
      'shoulder 4/10',
      ['bench-press', 'overhead-press', 'pull-up', 'dip', 'lateral-raise'],
      ['leg-press', 'romanian-deadlift', 'leg-curl'],
    ],
    ['elbow sore', ['standing-curl', 'triceps-pushdown', 'pull-up', 'bench-press'], ['leg-press', 'hip-thrust']],
    ['Achilles sore', ['standing-calf-raise', 'reverse-lunge'], ['bench-press', 'pulldown']],
    ['wrist 3/10', ['push-up', 'standing-curl', 'front-squat'], ['leg-extension', 'standing-calf-raise']],
    ['hamstring 4/10', ['leg-curl', 'romanian-deadlift', 'kneeling-hamstring-lowering'], ['bench-press', 'pulldown']],
  ])('%s', (note, loading, others) => {
    for (const id of loading) expect([id, held(note, id)]).toEqual([id, true]);
    for (const id of others) expect([id, held(note, id)]).toEqual([id, false]);
  });

  it('is every lift where the area is not known, and every lift that the library doesn’t hold', () => {
    for (const { id } of catalogue.exercises) expect(held('It hurt, 4/10', id)).toBe(true);
    expect(held('Knee 4/10', 'no-such-lift')).toBe(true);
  });

  it('is none without pain', () => {
    for (const { id } of catalogue.exercises) expect(held('No pain at all', id)).toBe(false);
  });

  it('knows what every exercise of the library loads', () => {
    for (const exercise of catalogue.exercises) {
      expect([exercise.id, loadedAreas(exercise).size]).not.toEqual([exercise.id, bodyAreas.length]);
    }
  });
});
