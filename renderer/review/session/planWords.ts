import { workSayer } from '../../../engine/document/sayWork.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { LoadUnits } from '../../../engine/review/load.ts';
import { type Plan, type PlannedSet, runsOfSets } from '../../../engine/review/plan.ts';
import { setLoad } from '../../../engine/review/work.ts';
import { plain } from '../../base/figures.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayPlan } from '../../words/sayPlan.ts';

const effort = ({ tempo, repsInReserve }: PlannedSet): string[] => [
  ...(tempo === undefined ? [] : [sayPlan('tempoOf', { tempo })]),
  ...(repsInReserve === undefined ? [] : [sayPlan('reserveOf', { count: plain(repsInReserve) })]),
];

/** A plan in one line: "3 × 8, 80 kg, tempo 3-1-X-0"; set by set where they differ: "10 × 20 kg, 2 of 15 × 12 kg; 2 in reserve". */
export function planWords(plan: Plan, units: LoadUnits, exercise: Pick<Exercise, 'implement'> | undefined): string {
  const sayer = workSayer(deskLanguage.getState().language, units);
  const loadOf = ({ loadKg }: PlannedSet): string | null => {
    const load = setLoad(loadKg, exercise);
    return load && sayer.load(load);
  };
  const runs = runsOfSets(plan);
  const [first] = runs;
  if (first !== undefined && runs.length === 1) {
    const load = loadOf(first.set);
    return [`${first.count} × ${first.set.reps}`, ...(load === null ? [] : [load]), ...effort(first.set)].join(', ');
  }
  const shared = effort(first?.set ?? { reps: 1 }).filter((words) =>
    runs.every(({ set }) => effort(set).includes(words)),
  );
  const said = runs.map(({ count, set }) => {
    const load = loadOf(set);
    const own = effort(set).filter((words) => !shared.includes(words));
    const alike = load === null ? sayPlan('bareReps', { reps: set.reps }) : `${set.reps} × ${load}`;
    const work = count === 1 ? alike : sayPlan('run', { count, set: alike });
    return own.length === 0 ? work : `${work} (${own.join(', ')})`;
  });
  return [said.join(', '), ...shared].join('; ');
}
