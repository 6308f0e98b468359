import type { Exercise } from '../../engine/exercises/exercise.ts';
import type { EntryGrade, GradeState, Overridden, Raise } from '../../engine/grading/grade.ts';
import type { Rubric } from '../../engine/rubric/rubric.ts';
import { counted, gain, plain, points } from '../base/figures.ts';
import { Strokes } from '../base/Strokes.tsx';

/** The mark, large; a dash while there is no grade. */
export function GradeMark({ state, testId }: { readonly state: GradeState; readonly testId: string }) {
  const mark = state.kind === 'none' ? '–' : state.mark;
  return (
    <span className="grade-mark" data-kind={state.kind} data-testid={testId}>
      {state.kind === 'none' ? <span aria-hidden="true">–</span> : mark}
      {state.kind === 'none' && <span className="visually-hidden">no grade yet</span>}
    </span>
  );
}

/** The exercise score as the sum it is: mean and lowest criterion by their shares, and the cap where it holds. */
export function ScoreFormula({ grade, rubric }: { readonly grade: EntryGrade; readonly rubric: Rubric }) {
  const { weightedMean, lowest } = grade;
  if (weightedMean === null || lowest === null) return null;
  const lowestName = rubric.criteria.find((known) => known.id === lowest.criterion)?.name ?? lowest.criterion;
  const free = (1 - rubric.lowestShare) * weightedMean + rubric.lowestShare * lowest.score;
  return (
    <p className="formula" data-testid="score-formula">
      <span className="figure">
        {plain(1 - rubric.lowestShare)} × {points(weightedMean)} + {plain(rubric.lowestShare)} × {points(lowest.score)}{' '}
        = {points(free)}
      </span>
      <span className="soft">mean of all, and the lowest: {lowestName}</span>
      {grade.cappedByStop && <strong>A stop flag holds it at {plain(rubric.stopCap.exercise)}.</strong>}
    </p>
  );
}

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

/** Says that a grade was set by hand, why, and what the flags alone give. */
export function ByHand({ override }: { readonly override: Overridden | null }) {
  if (override === null) return null;
  const { computed, reason } = override;
  return (
    <p className="by-hand" data-testid="by-hand">
      <strong>Set by hand.</strong> {reason}{' '}
      <span className="soft">
        By the flags alone: {computed.kind === 'none' ? 'no grade' : `${computed.mark} ${points(computed.score)}`}.
      </span>
    </p>
  );
}
