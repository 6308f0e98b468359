import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import { type Exercise, type View, views } from '../exercises/exercise.ts';
import type { SessionGrade } from '../grading/grade.ts';
import { isJudging } from '../review/parts.ts';
import type { Entry, Review } from '../review/review.ts';
import type { CriterionId } from '../rubric/rubric.ts';
import { criterionName, exerciseName } from '../sheet/flagRows.ts';
import type { FilmRequest, PlannedPain } from './letterPlan.ts';

/** How many requests a letter makes, unless more than these hold back. */
const most = 4;

/** The view that shows most of the criteria, the exercise's best one where they are equal; null where none shows any. */
function viewFor(exercise: Exercise, criteria: readonly CriterionId[]): View | null {
  const shown = (view: View) => criteria.filter((id) => exercise.judgedFrom[view]?.includes(id)).length;
  const candidates = [exercise.bestView, ...views.filter((view) => view !== exercise.bestView)];
  const best = candidates.reduce((a, b) => (shown(b) > shown(a) ? b : a));
  return shown(best) === 0 ? null : best;
}

function requestsFor(
  entry: Entry,
  grade: SessionGrade,
  catalogue: Catalogue,
  lighter: ReadonlySet<string>,
): FilmRequest[] {
  const exercise = findExercise(catalogue, entry.exercise);
  if (exercise === undefined) return [];
  const about = { exerciseId: entry.exercise, exercise: exerciseName(catalogue, entry.exercise) };
  const unopened = entry.flags.length === 0 && entry.ticks.length === 0;
  if (entry.clips.length > 0 && unopened) return [{ key: `unseen-${entry.id}`, kind: 'notLookedAt', ...about }];
  const onlyNotes = entry.ticks.length === 0 && !entry.flags.some(isJudging);
  if (entry.clips.length > 0 && onlyNotes) return [{ key: `unseen-${entry.id}`, kind: 'onlyNotes', ...about }];
  if (entry.clips.length === 0) return [{ key: `none-${entry.id}`, kind: 'none', ...about, view: exercise.bestView }];
  const scores = (grade.entries.find((each) => each.entryId === entry.id)?.criteria ?? []).filter(
    (score) => score.share > 0 && !score.lookedAt,
  );
  const names = (ids: readonly CriterionId[]) => ids.map((id) => criterionName(catalogue, id, entry.exercise));
  const hidden = scores.filter((score) => !score.applicable).map((score) => score.criterion);
  const unseen = scores.filter((score) => score.applicable).map((score) => score.criterion);
  const stopped = entry.flags.some((flag) => flag.severity === 'stop');
  const first: FilmRequest[] = lighter.has(about.exercise)
    ? [{ key: `lighter-${entry.id}`, kind: 'lighter', ...about, view: exercise.bestView }]
    : [];
  const requests: FilmRequest[] = stopped
    ? [{ key: `stop-${entry.id}`, kind: 'afterStop', ...about, view: exercise.bestView }]
    : first;
  if (hidden.length > 0 && !stopped) {
    const view = viewFor(exercise, hidden);
    const shown = view === null ? hidden : hidden.filter((id) => exercise.judgedFrom[view]?.includes(id));
    requests.push({ key: `view-${entry.id}`, kind: 'otherView', ...about, view, criteria: names(shown) });
  }
  if (unseen.length > 0 && !stopped) {
    requests.push({ key: `unseen-${entry.id}`, kind: 'unseen', ...about, criteria: names(unseen) });
  }
  return requests;
}

/** What pain asks of the next film, before anything else is asked; nothing without pain. */
function afterPain(pain: PlannedPain | null, entries: readonly Entry[]): FilmRequest[] {
  if (pain === null) return [];
  if (pain.held.length === 0 && entries.length > 0) return [{ key: 'pain', kind: 'withoutPain' }];
  const exercises = pain.held.map(({ exercise }) => exercise);
  return [{ key: 'again', kind: 'afterPain', step: pain.step, exercises }];
}

/** What stands above the wish to see more: pain, the entries it holds back, exercises that are to be lifted with less load. */
type WhatRules = {
  readonly pain: PlannedPain | null;
  readonly held: ReadonlySet<string>;
  readonly lighter: ReadonlySet<string>;
};

/**
 * What the next film should show: first light sets of what was unsafe, what no clip showed, what was not looked at;
 * else the same again, to compare. Pain comes first: of lifts that it holds back, nothing before it has settled.
 */
export function planFilm(
  review: Review,
  grade: SessionGrade,
  catalogue: Catalogue,
  { pain, held, lighter }: WhatRules,
): FilmRequest[] {
  const free = review.entries.filter(({ id }) => !held.has(id));
  const painful = afterPain(pain, review.entries);
  const requests = free.flatMap((entry) => requestsFor(entry, grade, catalogue, lighter));
  if (requests.length > 0) {
    const unsafe = ({ kind }: FilmRequest) => kind === 'afterStop' || kind === 'lighter';
    const inOrder = [...requests.filter(unsafe), ...requests.filter((request) => !unsafe(request))];
    const held = painful.length + requests.filter(unsafe).length;
    return [...painful, ...inOrder].slice(0, Math.max(most, held));
  }
  if (!review.entries.some((entry) => entry.clips.length > 0))
    return pain === null ? [{ key: 'first', kind: 'first' }] : painful;
  if (free.length === 0) return painful;
  const named =
    free.length === review.entries.length ? [] : free.map(({ exercise }) => exerciseName(catalogue, exercise));
  return [...painful, { key: 'same', kind: 'again', exercises: [...new Set(named)] }];
}
