import { describe, expect, it } from 'vitest';
import { buildCatalogue } from '../../../engine/exercises/buildCatalogue.ts';
import { faultsFor, findExercise } from '../../../engine/exercises/catalogue.ts';
import { fault } from '../catalogue.ts';
import { file, input, squat } from './data.ts';

describe('the catalogue', () => {
  it('gives every exercise of a file the faults of its pattern', () => {
    const catalogue = buildCatalogue(input(file({ exercises: [squat(), squat({ id: 'front-squat' })] })));
    expect(catalogue.exercises.map((exercise) => exercise.faults.length)).toEqual([12, 12]);
  });

  it("puts an exercise's own faults first", () => {
    const own = fault('ownDepth', 'depth');
    const [exercise] = buildCatalogue(input(file({ exercises: [squat({ faults: [own] })] }))).exercises;
    expect(exercise?.faults.map(({ id }) => id).slice(0, 2)).toEqual(['ownDepth', 'depthOne']);
  });

  it('lets a fault of its own take the place of the shared one with its id', () => {
    const own = { ...fault('depthOne', 'depth'), name: 'Its own words' };
    const [exercise] = buildCatalogue(input(file({ exercises: [squat({ faults: [own] })] }))).exercises;
    expect(exercise?.faults.filter(({ id }) => id === 'depthOne').map(({ name }) => name)).toEqual(['Its own words']);
  });

  it('leaves out the shared faults that an exercise omits', () => {
    const [exercise] = buildCatalogue(
      input(file({ exercises: [squat({ omits: ['depthOne'], faults: [fault('own', 'depth')] })] })),
    ).exercises;
    expect(exercise?.faults.map(({ id }) => id).slice(0, 2)).toEqual(['own', 'depthTwo']);
  });

  it('leaves out shared faults of criteria that the exercise is not judged by', () => {
    const criteria = [{ id: 'depth', share: 1 }];
    const judgedFrom = { side: ['depth'] };
    const [exercise] = buildCatalogue(input(file({ exercises: [squat({ criteria, judgedFrom })] }))).exercises;
    expect(exercise?.faults.map(({ id }) => id)).toEqual(['depthOne', 'depthTwo']);
  });
});

describe('looking things up', () => {
  const catalogue = buildCatalogue(input(file()));

  it('finds an exercise by id, and nothing for an id that nobody has', () => {
    expect(findExercise(catalogue, 'squat')?.name).toBe('Squat');
    expect(findExercise(catalogue, 'constructor')).toBeUndefined();
  });

  it('gives the faults of one criterion in the order of the library', () => {
    const exercise = squat({ faults: [fault('b', 'depth'), fault('x', 'pauses'), fault('a', 'depth')] });
    expect(faultsFor(exercise, 'depth').map(({ id }) => id)).toEqual(['b', 'a']);
    expect(faultsFor(exercise, 'nothing')).toEqual([]);
  });
});
