import { describe, expect, it } from 'vitest';
import { exerciseNamed } from '../../engine/exercises/searchExercises.ts';
import { shipped } from './shippedCatalogue.ts';

const named = (typed: string): string => {
  const answer = exerciseNamed(shipped, typed);
  return answer.kind === 'found' ? answer.exercise.id : `? ${answer.near.map(({ id }) => id).join(' ')}`;
};

describe('the names of the exercises', () => {
  it.each(shipped.exercises)('$id is found by each of its names, and no other is', ({ id, name, aliases }) => {
    for (const one of [id, name, ...(aliases?.en ?? []), ...(aliases?.de ?? [])])
      expect([one, named(one)]).toEqual([one, id]);
  });

  // Names as people type them in a gym; common usage, no source.
  it.each([
    ['military press', 'overhead-press'],
    ['OHP', 'overhead-press'],
    ['Schulterdrücken', 'overhead-press'],
    ['skull crushers', 'lying-triceps-extension'],
    ['french press', 'lying-triceps-extension'],
    ['lat pull down', 'pulldown'],
    ['Latzug', 'pulldown'],
    ['Klimmzuege', 'pull-up'],
    ['chinups', 'chin-up'],
    ['farmers walk', 'loaded-carry'],
    ['press up', 'push-up'],
    ['Liegestuetze', 'push-up'],
    ['rear delt fly', 'rear-deltoid-fly'],
    ['pallof press', 'anti-rotation-press'],
    ['australian pullup', 'inverted-row'],
    ['negative pullups', 'jump-and-lower-pull-up'],
    ['situps', 'sit-up'],
    ['Unterarmstütz', 'front-plank'],
    ['ab wheel', 'roll-out'],
    ['db bench', 'dumbbell-bench-press'],
    ['scott curl', 'preacher-curl'],
  ])('"%s" is %s', (typed, id) => expect(named(typed)).toBe(id));
});
