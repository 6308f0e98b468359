import type { Exercise } from '../../engine/exercises/exercise.ts';
import type { Raise } from '../../engine/grading/grade.ts';
import type { Rubric } from '../../engine/rubric/rubric.ts';
import { counted, gain } from '../base/figures.ts';
import { Strokes } from '../base/Strokes.tsx';

type RaiseListProps = {
  readonly raises: readonly Raise[];
  readonly rubric: Rubric;
  readonly exercises: readonly Exercise[];
  readonly exerciseOf: (entryId: string) => string;
};

/** What reads +0.0 is nothing to work on. */
const smallestGain = 0.05;

/** What would raise the grade, by how much, largest first. */
export function RaiseList({ raises, rubric, exercises, exerciseOf }: RaiseListProps) {
  const telling = raises.filter((raise) => raise.gain >= smallestGain);
  if (telling.length === 0) return null;
  return (
    <div className="raises">
      <h3>What would raise it</h3>
      <ol>
        {telling.map((raise) => {
          const exercise = exercises.find((known) => known.id === exerciseOf(raise.entryId));
          const fault = exercise?.faults.find((known) => known.id === raise.fault)?.name;
          const criterion = rubric.criteria.find((known) => known.id === raise.criterion)?.name ?? raise.criterion;
          return (
            <li key={raise.flagIds.join(' ')}>
              <span className="gain figure">+{gain(raise.gain)}</span>
              <Strokes weight={raise.weight} />
              <span>{fault ?? criterion}</span>
              <span className="soft">{counted(raise.reps, 'rep')}</span>
            </li>
          );
        })}
      </ol>
    </div>
  );
}
