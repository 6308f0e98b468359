import * as v from 'valibot';
import { type Rubric, rubricSchema } from '../rubric/rubric.ts';
import { type Catalogue, cautionSchema, inOneEach, translationSchema } from './catalogue.ts';
import { checkCatalogue } from './checkCatalogue.ts';
import {
  type Exercise,
  type ExerciseEntryData,
  exerciseFileSchema,
  type Fault,
  faultSchema,
  narrowerOf,
  views,
} from './exercise.ts';

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
  checkCatalogue(catalogue, files, common);
  return catalogue;
};

type Also = NonNullable<ExerciseEntryData['alsoJudged']>;

const sumOf = (also: Also): number => also.reduce((sum, one) => sum + one.share, 0);

/** What is taken from one criterion goes first; the rest is taken from all in proportion. */
function sharesUnder({ criteria }: Pick<Exercise, 'criteria'>, also: Also): Exercise['criteria'] {
  if (also.length === 0) return criteria;
  const left = 1 - sumOf(also.filter((one) => one.takenFrom === undefined));
  const given = (id: string): number => sumOf(also.filter((one) => one.takenFrom === id));
  return [
    ...criteria.map(({ id, share }) => ({ id, share: (share - given(id)) * left })),
    ...also.map(({ id, share, takenFrom }) => ({ id, share: takenFrom === undefined ? share : share * left })),
  ];
}

type Sources = {
  readonly rubric: Rubric;
  readonly patternFaults: readonly Fault[];
  readonly common: readonly Fault[];
};

/** What an exercise is also judged by: the criteria it names itself, and those that are judged on every exercise. */
function alsoUnder({ criteria, alsoJudged = [] }: ExerciseEntryData, rubric: Rubric) {
  const known = new Set(rubric.criteria.map((criterion) => criterion.id));
  const named = new Set([...criteria, ...alsoJudged].map((one) => one.id));
  const everywhere: Also = rubric.criteria.flatMap((one) =>
    one.everywhere === undefined || named.has(one.id) ? [] : { id: one.id, ...one.everywhere, from: [...views] },
  );
  return { own: alsoJudged.filter((one) => known.has(one.id)), everywhere };
}

/** Each fault under the criterion it belongs to here; those of criteria that are not judged here are left out. */
const placed = (faults: readonly Fault[], judged: ReadonlySet<string>): Fault[] =>
  faults
    .map((fault) => ({
      ...fault,
      criterion: narrowerOf(fault).findLast((id) => judged.has(id)) ?? fault.criterion,
    }))
    .filter((fault) => judged.has(fault.criterion));

/** The first fault of each id. */
const firstOfEach = (faults: readonly Fault[]): Fault[] => {
  const seen = new Set<string>();
  return faults.filter(({ id }) => !seen.has(id) && seen.add(id));
};

/**
 * The common faults of an exercise: those of every exercise, those of what it is also judged by under any version, and
 * of the criteria these are taken from: a fault keeps its name where its narrower criterion is not known.
 */
function commonOf({ alsoJudged = [], needs = [] }: ExerciseEntryData, common: readonly Fault[]): Fault[] {
  const partOf = new Map(alsoJudged.map((one) => [one.id, one.partOf]));
  const isOfOne = (fault: Fault): boolean => narrowerOf(fault).some((id) => partOf.has(id));
  const coarser = new Set(common.filter(isOfOne).map((fault) => fault.criterion));
  return common.flatMap((fault) => {
    if (fault.everywhere) return fault.with?.every((item) => !needs.includes(item)) ? [] : [fault];
    if (fault.narrower === undefined) return coarser.has(fault.criterion) ? [fault] : [];
    if (!isOfOne(fault)) return [];
    const [own] = narrowerOf(fault).flatMap((id) => partOf.get(id) ?? []);
    return [{ ...fault, criterion: own ?? fault.criterion }];
  });
}

/**
 * An exercise as a rubric judges it: criteria with shares that add up to 1, the views that can judge them, and its
 * faults. Its own faults come first, then its pattern's, then the common ones; one of its own takes the place of another
 * with the same id, and those it omits stay out.
 */
export function judgedUnder(exercise: ExerciseEntryData, { rubric, patternFaults, common }: Sources): Exercise {
  const { own, everywhere } = alsoUnder(exercise, rubric);
  const criteria = sharesUnder({ criteria: sharesUnder(exercise, own) }, everywhere);
  const judgedFrom = { ...exercise.judgedFrom };
  for (const { id, from } of [...own, ...everywhere])
    for (const view of from) judgedFrom[view] = [...(judgedFrom[view] ?? []), id];
  const omits = new Set(exercise.omits ?? []);
  const shared = [...patternFaults, ...commonOf(exercise, common)].filter((fault) => !omits.has(fault.id));
  const judged = new Set(criteria.map((criterion) => criterion.id));
  const faults = placed(firstOfEach([...exercise.faults, ...shared]), judged);
  return { ...exercise, criteria: [...criteria], judgedFrom, faults };
}
