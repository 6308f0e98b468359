import { describe, expect, it } from 'vitest';
import { exerciseNames, nameClues } from '../../../engine/arrival/nameClues.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';

const names = exerciseNames(shipped);
const clues = (name: string) => nameClues(name, names);

describe('what a name says of its clip', () => {
  it.each([
    ['IMG_0412.MOV', null],
    ['squat set 2.mp4', 'back-squat'],
    ['Front-Squat_3.mov', 'front-squat'],
    ['kniebeuge 100kg.mp4', 'back-squat'],
    ['20261128_RDL_2.mp4', 'romanian-deadlift'],
    ['Bankdruecken.mp4', 'bench-press'],
    ['benchpress3.mov', 'bench-press'],
    ['deadlifts.mp4', 'deadlift'],
    ['Romanian deadlift, third set.mp4', 'romanian-deadlift'],
    ['pause bench 3.mp4', 'bench-press'],
    ['WhatsApp Video 2026-11-28 at 18.03.11.mp4', null],
  ])('%s shows %s', (name, exercise) => {
    expect(clues(name).exercise).toBe(exercise);
  });

  it('reads the view from the words that name no exercise', () => {
    expect(clues('front squat 1.mp4').view).toBeNull();
    expect(clues('front squat side.mp4').view).toBe('side');
    expect(clues('squat_front.mp4').view).toBe('front');
    expect(clues('Kniebeuge von hinten.mp4').view).toBe('rear');
    expect(clues('back squat.mp4').view).toBeNull();
  });

  it('reads a load only with its unit', () => {
    expect(clues('squat 100kg.mp4').loadKg).toBe(100);
    expect(clues('squat 82,5 kg x5.mp4').loadKg).toBe(82.5);
    // 225 lb × 0.45359237 kg/lb = 102.058… kg
    expect(clues('squat_225lb.mp4').loadKg).toBe(102.06);
    expect(clues('squat 100.mp4').loadKg).toBeNull();
    expect(clues('IMG_2100kgb.mp4').loadKg).toBeNull();
  });

  it('takes a name that two exercises go by for neither', () => {
    const [squat, bench] = shipped.exercises.filter(({ id }) => id === 'back-squat' || id === 'bench-press');
    if (squat === undefined || bench === undefined) throw new Error('The catalogue lacks them.');
    const called = (exercise: typeof squat) => ({ ...exercise, aliases: { en: ['heavy one'], de: [] } });
    const both = exerciseNames({ exercises: [called(squat), called(bench)] });
    expect(nameClues('heavy one.mp4', both).exercise).toBeNull();
  });
});
