import type { Rubric } from '../rubric/rubric.ts';
import type { Exercise, ExerciseEntryData, Fault } from './exercise.ts';

type Also = NonNullable<ExerciseEntryData['alsoJudged']>;

const sumOf = (also: Also): number => also.reduce((sum, one) => sum + one.share, 0);

/** What is taken from one criterion goes first; the rest is taken from all in proportion. */
function sharesUnder({ criteria }: ExerciseEntryData, also: Also): Exercise['criteria'] {
  const fromAll = also.filter((one) => one.takenFrom === undefined);
  const fromOne = also.filter((one) => one.takenFrom !== undefined);
  const left = criteria.map(({ id, share }) => ({
    id,
    share: share - sumOf(fromOne.filter((one) => one.takenFrom === id)),
  }));
  const scaled = [...left, ...fromOne].map(({ id, share }) => ({ id, share: share * (1 - sumOf(fromAll)) }));
  return [...scaled, ...fromAll.map(({ id, share }) => ({ id, share }))];
}

export type JudgingData = {
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
 * An exercise as a rubric judges it: criteria with shares that add up to 1, the views that can judge them, and its
 * faults. Its own faults come first, then its pattern's, then the common ones of the criteria it is also judged by and
 * of those they are part of; one of its own takes the place of another with the same id, and those it omits stay out.
 */
export function judgedUnder(exercise: ExerciseEntryData, { rubric, patternFaults, common }: JudgingData): Exercise {
  const known = new Set(rubric.criteria.map((criterion) => criterion.id));
  const also = (exercise.alsoJudged ?? []).filter((one) => known.has(one.id));
  const criteria = also.length === 0 ? exercise.criteria : sharesUnder(exercise, also);
  const judgedFrom = { ...exercise.judgedFrom };
  for (const { id, from } of also) for (const view of from) judgedFrom[view] = [...(judgedFrom[view] ?? []), id];
  const omits = new Set(exercise.omits ?? []);
  const touched = new Set(also.map((one) => one.id));
  for (const { id, partOf } of rubric.criteria) if (partOf !== undefined && touched.has(id)) touched.add(partOf);
  const shared = [...patternFaults, ...common.filter((fault) => touched.has(fault.criterion))];
  const candidates = [...exercise.faults, ...shared.filter((fault) => !omits.has(fault.id))];
  const judged = new Set(criteria.map((criterion) => criterion.id));
  return { ...exercise, criteria: [...criteria], judgedFrom, faults: placed(firstOfEach(candidates), judged) };
}
