import type { Rubric } from '../rubric/rubric.ts';
import type { Exercise, ExerciseEntryData, Fault } from './exercise.ts';

type Also = NonNullable<ExerciseEntryData['alsoJudged']>;

const sumOf = (also: Also): number => also.reduce((sum, one) => sum + one.share, 0);

/** What is taken from one criterion goes first; the rest is taken from all in proportion. */
function sharesUnder({ criteria }: ExerciseEntryData, also: Also): Exercise['criteria'] {
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

/** Each fault under the criterion it belongs to here; those of criteria that are not judged here are left out. */
const placed = (faults: readonly Fault[], judged: ReadonlySet<string>): Fault[] =>
  faults
    .map((fault) =>
      fault.narrower !== undefined && judged.has(fault.narrower) ? { ...fault, criterion: fault.narrower } : fault,
    )
    .filter((fault) => judged.has(fault.criterion));

/** The first fault of each id. */
const firstOfEach = (faults: readonly Fault[]): Fault[] => {
  const seen = new Set<string>();
  return faults.filter(({ id }) => !seen.has(id) && seen.add(id));
};

/**
 * The common faults of what an exercise is also judged by under any version, and of the criteria these are taken from:
 * a fault keeps its name where its narrower criterion is not known.
 */
function commonOf({ alsoJudged = [] }: ExerciseEntryData, common: readonly Fault[]): Fault[] {
  const also = new Set(alsoJudged.map((one) => one.id));
  const narrower = common.filter((fault) => fault.narrower !== undefined && also.has(fault.narrower));
  const coarser = new Set(narrower.map((fault) => fault.criterion));
  const partOf = new Map(alsoJudged.map((one) => [one.id, one.partOf]));
  return common
    .filter((fault) => (fault.narrower === undefined ? coarser.has(fault.criterion) : also.has(fault.narrower)))
    .map((fault) => ({ ...fault, criterion: partOf.get(fault.narrower ?? '') ?? fault.criterion }));
}

/**
 * An exercise as a rubric judges it: criteria with shares that add up to 1, the views that can judge them, and its
 * faults. Its own faults come first, then its pattern's, then the common ones; one of its own takes the place of another
 * with the same id, and those it omits stay out.
 */
export function judgedUnder(exercise: ExerciseEntryData, { rubric, patternFaults, common }: Sources): Exercise {
  const known = new Set(rubric.criteria.map((criterion) => criterion.id));
  const also = (exercise.alsoJudged ?? []).filter((one) => known.has(one.id));
  const criteria = also.length === 0 ? exercise.criteria : sharesUnder(exercise, also);
  const judgedFrom = { ...exercise.judgedFrom };
  for (const { id, from } of also) for (const view of from) judgedFrom[view] = [...(judgedFrom[view] ?? []), id];
  const omits = new Set(exercise.omits ?? []);
  const shared = [...patternFaults, ...commonOf(exercise, common)].filter((fault) => !omits.has(fault.id));
  const judged = new Set(criteria.map((criterion) => criterion.id));
  const faults = placed(firstOfEach([...exercise.faults, ...shared]), judged);
  return { ...exercise, criteria: [...criteria], judgedFrom, faults };
}
