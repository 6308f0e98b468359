/** Exercises: the library's shape, the catalogue built from it, and how to look things up in it. */
export { buildCatalogue, type CatalogueInput } from './buildCatalogue.ts';
export type { Catalogue } from './catalogue.ts';
export { type Caution, cautionSchema } from './caution.ts';
export {
  type Exercise,
  type ExerciseFile,
  exerciseFileSchema,
  exerciseSchema,
  type Fault,
  faultSchema,
  type Goal,
  goalSchema,
  goals,
  type TempoTarget,
  type View,
  viewSchema,
  views,
} from './exercise.ts';
export { faultsFor, findExercise } from './lookUp.ts';
