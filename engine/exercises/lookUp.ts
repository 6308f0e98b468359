import type { CriterionId } from '../rubric/rubric.ts';
import type { Catalogue } from './catalogue.ts';
import type { Exercise, Fault } from './exercise.ts';

/** The exercise of that id; undefined where the catalogue has none. */
export const findExercise = (catalogue: Catalogue, id: string): Exercise | undefined =>
  catalogue.exercises.find((exercise) => exercise.id === id);

/** The named ways to miss a criterion in an exercise, in the library's order; empty where it isn't judged. */
export const faultsFor = (exercise: Exercise, criterion: CriterionId): readonly Fault[] =>
  exercise.faults.filter((fault) => fault.criterion === criterion);
