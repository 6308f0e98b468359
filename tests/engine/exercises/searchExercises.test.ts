import { describe, expect, it } from 'vitest';
import { type Catalogue, translated } from '../../../engine/exercises/catalogue.ts';
import {
  exerciseNamed,
  nameTranslations,
  type SearchedCatalogue,
  searchExercises,
} from '../../../engine/exercises/searchExercises.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';
import { exercise } from '../catalogue.ts';

const catalogue: SearchedCatalogue = {
  exercises: [
    exercise({ id: 'back-squat', name: 'Back squat', aliases: { en: ['barbell squat'], de: ['Nackenkniebeuge'] } }),
    exercise({ id: 'front-squat', name: 'Front squat' }),
    exercise({ id: 'pull-up', name: 'Pull-up', aliases: { en: [], de: ['Klimmzüge'] } }),
    exercise({ id: 'dumbbell-bench-press', name: 'Dumbbell bench press' }),
    exercise({ id: 'split-squat', name: 'Split squat' }),
  ],
  translations: [
    {
      language: 'de',
      texts: { 'Back squat': 'Kniebeuge mit Hantel', 'Front squat': 'Frontkniebeuge', 'It matters.': 'Es zählt.' },
    },
  ],
};

const whole: Catalogue = { rubric: shipped.rubric, cautions: [], ...catalogue };

const named = (typed: string): string => {
  const answer = exerciseNamed(catalogue, typed);
  return answer.kind === 'found' ? answer.exercise.id : `? ${answer.near.map(({ id }) => id).join(' ')}`;
};
const found = (typed: string): string[] => searchExercises(catalogue, typed).map(({ id }) => id);

describe('an exercise by the name a person types', () => {
  it.each([
    ['back-squat', 'back-squat'],
    ['Back Squat', 'back-squat'],
    ['backsquat', 'back-squat'],
    ['  BACK_squats ', 'back-squat'],
    ['barbell squat', 'back-squat'],
    ['BB squat', 'back-squat'],
    ['pullups', 'pull-up'],
    ['pull ups', 'pull-up'],
    ['Klimmzüge', 'pull-up'],
    ['klimmzuege', 'pull-up'],
    ['Kniebeuge (mit Hantel)', 'back-squat'],
    ['db bench press', 'dumbbell-bench-press'],
    ['bench press, dumbbell', 'dumbbell-bench-press'],
  ])('"%s" is %s', (typed, id) => expect(named(typed)).toBe(id));

  it.each([
    ['bak squat', 'back-squat'],
    ['front sqaut', 'front-squat'],
    ['frontkniebeugen', 'front-squat'],
    ['klimzug', 'pull-up'],
  ])('"%s" is near %s', (typed, id) => expect(named(typed)).toMatch(new RegExp(`^\\? ${id}`)));

  it('suggests at most three, and nothing where nothing is like it', () => {
    expect(named('squat')).toBe('? back-squat front-squat split-squat');
    expect(named('squad')).toBe('? back-squat front-squat split-squat');
    expect(named('underwater basket')).toBe('? ');
    expect(named('')).toBe('? ');
    expect(named('--')).toBe('? ');
  });
});

describe('a search of the exercises', () => {
  it('gives all in their order while nothing is typed', () => {
    expect(found(' ')).toEqual(catalogue.exercises.map(({ id }) => id));
  });

  it('puts the name before names that begin with it, and these before names that hold it', () => {
    expect(found('squat split')).toEqual(['split-squat']);
    expect(found('s')).toEqual(['split-squat', 'back-squat', 'front-squat', 'dumbbell-bench-press']);
    expect(found('kniebeuge')).toEqual(['back-squat', 'front-squat']);
  });

  it('gives near spellings where nothing answers', () => {
    expect(found('benchpres dumbell')).toEqual([]);
    expect(found('dumbell bench pres')).toEqual(['dumbbell-bench-press']);
    expect(found('zzz')).toEqual([]);
  });

  it('reads of other languages the names alone', () => {
    expect(nameTranslations(whole)).toEqual([
      {
        language: 'de',
        texts: {
          'Back squat': 'Kniebeuge mit Hantel',
          'Front squat': 'Frontkniebeuge',
          'Pull-up': 'Pull-up',
          'Dumbbell bench press': 'Dumbbell bench press',
          'Split squat': 'Split squat',
        },
      },
    ]);
  });

  it('gives a German catalogue the English names, so that these are found too', () => {
    expect(nameTranslations(translated(whole, 'de'))).toEqual([
      {
        language: 'en',
        texts: {
          'Kniebeuge mit Hantel': 'Back squat',
          Frontkniebeuge: 'Front squat',
          'Pull-up': 'Pull-up',
          'Dumbbell bench press': 'Dumbbell bench press',
          'Split squat': 'Split squat',
        },
      },
    ]);
  });
});
