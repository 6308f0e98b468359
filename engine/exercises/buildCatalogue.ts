import * as v from 'valibot';
import { rubricSchema } from '../rubric/rubric.ts';
import { type Catalogue, cautionSchema } from './catalogue.ts';
import { checkCatalogue } from './checkCatalogue.ts';
import { exerciseFileSchema, faultSchema } from './exercise.ts';
import { judgedUnder } from './judgedUnder.ts';
import { inOneEach, translationSchema } from './translation.ts';

/** The judging data as read from files, not yet checked; `name` is how an error speaks of a file. */
export type CatalogueInput = {
  readonly rubric: unknown;
  readonly exerciseFiles: readonly { readonly name: string; readonly content: unknown }[];
  /** Faults that any exercise can show which is also judged by their criterion. */
  readonly commonFaults?: unknown;
  /** A list of cautions. */
  readonly cautions: unknown;
  /** The texts of all of it in other languages. */
  readonly translations?: readonly unknown[];
};

const parse = <S extends v.GenericSchema>(schema: S, content: unknown, file: string): v.InferOutput<S> => {
  const result = v.safeParse(schema, content);
  if (result.success) return result.output;
  const issue = result.issues[0];
  throw new Error(`${file}, at ${v.getDotPath(issue) ?? 'the top'}: ${issue.message}`);
};

/**
 * Builds the catalogue from the contents of the rubric, the exercise files, the common faults and the cautions: checks
 * each against its schema, gives every exercise the criteria and faults it has under this rubric, and checks what
 * refers to what.
 * Throws an Error naming the file and the place where the data is wrong.
 */
export const buildCatalogue = (input: CatalogueInput): Catalogue => {
  const rubric = parse(rubricSchema, input.rubric, 'rubric');
  const cautions = parse(v.array(cautionSchema), input.cautions, 'cautions');
  const files = input.exerciseFiles.map(({ name, content }) => ({
    name,
    data: parse(exerciseFileSchema, content, name),
  }));
  const common = parse(v.array(faultSchema), input.commonFaults ?? [], 'common faults');
  const exercises = files.flatMap(({ data }) =>
    data.exercises.map((exercise) => judgedUnder(exercise, { rubric, patternFaults: data.faults, common })),
  );
  const translations = inOneEach((input.translations ?? []).map((one) => parse(translationSchema, one, 'translation')));
  const catalogue: Catalogue = { rubric, cautions, exercises, language: 'en', translations };
  checkCatalogue(catalogue, files);
  return catalogue;
};
