import * as v from 'valibot';
import { rubricSchema } from '../rubric/rubric.ts';
import type { Catalogue } from './catalogue.ts';
import { cautionSchema } from './caution.ts';
import { checkCatalogue } from './checkCatalogue.ts';
import {
  type Exercise,
  type ExerciseEntryData,
  type ExerciseFile,
  exerciseFileSchema,
  type Fault,
} from './exercise.ts';

/** The judging data as read from files, not yet checked; `name` is how an error speaks of a file. */
export type CatalogueInput = {
  readonly rubric: unknown;
  readonly exerciseFiles: readonly { readonly name: string; readonly content: unknown }[];
  /** A list of cautions. */
  readonly cautions: unknown;
};

const parse = <S extends v.GenericSchema>(schema: S, content: unknown, file: string): v.InferOutput<S> => {
  const result = v.safeParse(schema, content);
  if (result.success) return result.output;
  const issue = result.issues[0];
  throw new Error(`${file}, at ${v.getDotPath(issue) ?? 'the top'}: ${issue.message}`);
};

/**
 * The faults an exercise is judged by: its own first; one of its own with the id of a shared one takes its place,
 * and those it omits stay out.
 */
const mergedFaults = (exercise: ExerciseEntryData, shared: readonly Fault[]): Fault[] => {
  const apart = new Set([...exercise.faults.map((fault) => fault.id), ...(exercise.omits ?? [])]);
  const judged = new Set(exercise.criteria.map((criterion) => criterion.id));
  return [...exercise.faults, ...shared.filter((fault) => !apart.has(fault.id) && judged.has(fault.criterion))];
};

const exercisesOf = (file: ExerciseFile): Exercise[] =>
  file.exercises.map((exercise) => ({ ...exercise, faults: mergedFaults(exercise, file.faults) }));

/**
 * Builds the catalogue from the contents of the rubric, the exercise files and the cautions: checks each against
 * its schema, gives every exercise the faults of its pattern, and checks what refers to what.
 * Throws an Error naming the file and the place where the data is wrong.
 */
export const buildCatalogue = (input: CatalogueInput): Catalogue => {
  const rubric = parse(rubricSchema, input.rubric, 'rubric');
  const cautions = parse(v.array(cautionSchema), input.cautions, 'cautions');
  const files = input.exerciseFiles.map(({ name, content }) => ({
    name,
    data: parse(exerciseFileSchema, content, name),
  }));
  const catalogue = { rubric, cautions, exercises: files.flatMap(({ data }) => exercisesOf(data)) };
  checkCatalogue(catalogue, files);
  return catalogue;
};
