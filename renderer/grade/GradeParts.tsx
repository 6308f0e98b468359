import { type Catalogue, findExercise } from '../../engine/exercises/catalogue.ts';
import type { EntryGrade, GradeState, Overridden, Raise } from '../../engine/grading/grade.ts';
import type { ProgrammeFinding } from '../../engine/programme/finding.ts';
import { shownGain } from '../../engine/rubric/shownNumbers.ts';
import { criterionName } from '../../engine/sheet/flagRows.ts';
import { sayFinding } from '../../engine/wording/sayGrade.ts';
import { gain, plain, points } from '../base/figures.ts';
import { Strokes } from '../base/Strokes.tsx';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayGrade } from '../words/sayGrade.ts';

/** The mark, large; a dash while there is no grade. */
export function GradeMark({ state, testId }: { readonly state: GradeState; readonly testId: string }) {
  const mark = state.kind === 'none' ? '–' : state.mark;
  return (
    <span className="grade-mark" data-kind={state.kind} data-testid={testId}>
      {state.kind === 'none' ? <span aria-hidden="true">–</span> : mark}
      {state.kind === 'none' && <span className="visually-hidden">{sayGrade('noGradeYet')}</span>}
    </span>
  );
}

/** The exercise score as the sum it is: mean and lowest criterion by their shares, and the cap where it holds. */
export function ScoreFormula({ grade, catalogue }: { readonly grade: EntryGrade; readonly catalogue: Catalogue }) {
  const { weightedMean, lowest, lost } = grade;
  if (weightedMean === null || lowest === null || lost === null) return null;
  const { rubric } = catalogue;
  const nameOf = (id: string): string => criterionName(catalogue, id, grade.exercise);
  const costly = lost.lowest.filter((one) => one.points > 0);
  const off = [lost.mean, ...costly.map((one) => one.points)];
  const free = Math.max(0, 100 - off.reduce((sum, one) => sum + one, 0));
  const { lowestShare } = rubric;
  return (
    <p className="formula" data-testid="score-formula">
      {lowestShare === undefined ? (
        <>
          <span className="figure">
            100 − {off.map(plain).join(' − ')} = {points(free)}
          </span>{' '}
          <span className="soft">
            {sayGrade('pointsOff', {
              parts: [sayGrade('meanOfAll'), ...costly.map((one) => nameOf(one.criterion))].join(', '),
            })}
          </span>
        </>
      ) : (
        <>
          <span className="figure">
            {plain(1 - lowestShare)} × {points(weightedMean)} + {plain(lowestShare)} × {points(lowest.score)} ={' '}
            {points(free)}
          </span>{' '}
          <span className="soft">{sayGrade('meanAndLowest', { criterion: nameOf(lowest.criterion) })}</span>
        </>
      )}
      {grade.cappedByStop && <strong>{sayGrade('cappedByStop', { cap: plain(rubric.stopCap.exercise) })}</strong>}
    </p>
  );
}

type RaiseListProps = {
  readonly title: string;
  readonly raises: readonly Raise[];
  readonly catalogue: Catalogue;
  readonly exerciseOf: (entryId: string) => string;
  /** What was found about the plan. */
  readonly findings: readonly ProgrammeFinding[];
};

/** What would raise the grade, by how much, largest first; what reads +0.0 is nothing to work on. */
export function RaiseList({ title, raises, catalogue, exerciseOf, findings }: RaiseListProps) {
  const telling = raises.filter((raise) => shownGain(raise.gain, 1) > 0);
  const nameOf = (raise: Raise): string => {
    switch (raise.kind) {
      case 'group': {
        const exercise = exerciseOf(raise.entryId);
        const fault = findExercise(catalogue, exercise)?.faults.find((known) => known.id === raise.fault)?.name;
        return fault ?? criterionName(catalogue, raise.criterion, exercise);
      }
      case 'stops':
        return sayGrade('stopsTogether', { count: raise.groups });
      case 'finding': {
        const finding = findings.find((known) => known.id === raise.findingId);
        if (finding === undefined) return sayGrade('programme');
        const { what } = sayFinding(finding, deskLanguage.getState().language);
        return sayGrade('programmeFinding', { finding: what });
      }
    }
  };
  if (telling.length === 0) return null;
  return (
    <div className="raises">
      <h2>{title}</h2>
      <ol>
        {telling.map((raise) => (
          <li key={raise.kind === 'finding' ? raise.findingId : raise.flagIds.join(' ')}>
            <span className="gain figure">+{gain(raise.gain)}</span> <Strokes severity={raise.severity} />{' '}
            <span>{nameOf(raise)}</span>{' '}
            {raise.kind !== 'finding' && <span className="soft">{sayGrade('reps', { count: raise.reps })}</span>}
          </li>
        ))}
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
      <strong>{sayGrade('setByHand')}</strong> {reason}{' '}
      <span className="soft">
        {sayGrade('byFlagsAlone', {
          grade: computed.kind === 'none' ? sayGrade('noGrade') : `${computed.mark} ${points(computed.score)}`,
        })}
      </span>
    </p>
  );
}
