import type { Exercise, Goal, View } from '../../exercises/exercise.ts';
import type { Plan } from '../../review/plan.ts';
import type { Curves, RepMeasurement, SetMeasurement } from '../measurement.ts';
import type { Suggestion } from '../suggestion.ts';
import { type AskedTempo, askedTempo } from './askedTempo.ts';
import { evennessFindings } from './evennessFindings.ts';
import { evidenceOf } from './evidence.ts';
import { type Finding, suggestionOf } from './finding.ts';
import { headFindings } from './headFindings.ts';
import { pathFindings } from './pathFindings.ts';
import { holdFindings, pauseFindings } from './pauseFindings.ts';
import { praiseFor } from './praise.ts';
import { rangeFindings } from './rangeFindings.ts';
import { tempoFindings } from './tempoFindings.ts';

export type SuggestRequest = {
  readonly measurement: SetMeasurement;
  /** As the rubric judges it. */
  readonly exercise: Exercise;
  readonly goal: Goal;
  readonly plan: Plan | null;
  /** Ids of the criteria that the rubric knows. */
  readonly rubricCriteria: readonly string[];
  /** As the coach chose it; null = as the joints show it, and where they don't, nothing is ruled out by it. */
  readonly view: View | null;
};

const mostPraise = 2;

type SetToJudge = {
  readonly reps: readonly RepMeasurement[];
  readonly curves: Curves;
  readonly exercise: Exercise;
  readonly asked: AskedTempo;
};

function findingsOf({ reps, curves, exercise, asked }: SetToJudge): Finding[] {
  if (exercise.beginsWith === 'hold') return holdFindings(reps, asked);
  return [
    ...rangeFindings(reps, exercise),
    ...tempoFindings(reps, exercise, asked.eccentric),
    ...evennessFindings(reps, exercise, curves),
    ...pauseFindings(reps, exercise, asked),
    ...pathFindings(reps, exercise),
    ...headFindings(reps, exercise),
  ];
}

/**
 * The flags that a set's measures propose, held against the plan's tempo, else the exercise's targets for the goal:
 * first what misses them, then praise for at most two criteria that every rep meets. Nothing is proposed of what lies
 * within its uncertainty of a limit, nothing without the evidence for it, and nothing in a criterion that the rubric or the
 * view doesn't judge. The order of the reps given is of no account.
 */
export function suggest(request: SuggestRequest): Suggestion[] {
  const { measurement, exercise, goal, plan, rubricCriteria } = request;
  const view = request.view ?? measurement.view?.view ?? null;
  const reps = evidenceOf(measurement, view);
  const asked = askedTempo(exercise, goal, plan);
  const isJudged = ({ criterion }: Suggestion): boolean =>
    rubricCriteria.includes(criterion) &&
    exercise.criteria.some(({ id }) => id === criterion) &&
    (view === null || exercise.judgedFrom[view]?.includes(criterion) === true);

  const found = findingsOf({ reps, curves: measurement.curves, exercise, asked })
    .map((finding) => ({ coarse: finding.criterion, suggestion: suggestionOf(finding, exercise) }))
    .flatMap(({ coarse, suggestion }) => (suggestion === null ? [] : [{ coarse, suggestion }]));
  const missed = new Set(found.flatMap(({ coarse, suggestion }) => [coarse, suggestion.criterion]));
  const praise = (reps.length < measurement.reps.length ? [] : praiseFor(reps, exercise, asked)).filter(
    (each) => isJudged(each) && !missed.has(each.criterion),
  );
  return [...found.map(({ suggestion }) => suggestion).filter(isJudged), ...praise.slice(0, mostPraise)];
}
