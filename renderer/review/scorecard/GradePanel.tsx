import type { ReactNode } from 'react';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { EntryGrade, SessionGrade } from '../../../engine/grading/grade.ts';
import type { Rubric } from '../../../engine/rubric/rubric.ts';
import { sayMissingGrade } from '../../../engine/wording/sayGrade.ts';
import { counted, points, share } from '../../base/figures.ts';
import { ByHand, GradeMark, RaiseList, ScoreFormula } from '../../grade/GradeParts.tsx';

type GradePanelProps = {
  readonly grade: EntryGrade;
  readonly session: SessionGrade;
  readonly exercise: Exercise | null;
  readonly exercises: readonly Exercise[];
  readonly rubric: Rubric;
  /** Facts about the session's grade to go with its letter. */
  readonly children: ReactNode;
};

/** How many cells of the scorecard were looked at: "12 of 60 cells". */
function cellsSeen({ criteria }: EntryGrade): string {
  const sumOf = (which: 'lookedAt' | 'applicable') => criteria.reduce((sum, { cells }) => sum + cells[which], 0);
  return `${sumOf('lookedAt')} of ${counted(sumOf('applicable'), 'cell')}`;
}

/** The exercise's grade as it stands now, the sum it came from, and what would raise it. */
export function GradePanel({ grade, session, exercise, exercises, rubric, children }: GradePanelProps) {
  return (
    <section className="grade-panel" aria-label="Grade">
      <div className="grade-line">
        <GradeMark state={grade.state} testId="entry-grade" />
        <div>
          <div className="grade-title">{exercise?.name ?? grade.exercise}</div>
          {grade.state.kind !== 'none' && <div className="figure">{points(grade.state.score)} points</div>}
          {grade.state.kind === 'provisional' && <div className="provisional">provisional</div>}
        </div>
      </div>
      <ByHand override={grade.override} />
      {grade.state.kind === 'none' && <p className="soft">{sayMissingGrade(grade.state.reason, 'en')}</p>}
      <ScoreFormula grade={grade} rubric={rubric} />
      <dl className="grade-facts">
        <div>
          <dt>Looked at</dt>
          <dd data-testid="coverage">
            {share(grade.coverage)}
            {rubric.lookedAt === 'cell' && <span className="soft"> {cellsSeen(grade)}</span>}
          </dd>
        </div>
        {grade.range !== null && grade.range.high - grade.range.low >= 0.05 && (
          <div>
            <dt>Can end between</dt>
            <dd>
              {points(grade.range.low)} and {points(grade.range.high)}
            </dd>
          </div>
        )}
        <div>
          <dt>Session</dt>
          <dd data-testid="session-grade">
            {session.state.kind === 'none'
              ? '–'
              : `${session.state.mark} ${points(session.state.score)}${session.state.kind === 'provisional' ? ', provisional' : ''}${session.override === null ? '' : ', by hand'}`}
          </dd>
        </div>
        {children}
      </dl>
      {[
        { title: 'What would raise it', raises: grade.raises },
        // What no single exercise gains by: findings about the plan, and the stops of several exercises.
        { title: 'What would raise the session', raises: session.raises.filter(({ kind }) => kind !== 'group') },
      ].map((list) => (
        <RaiseList
          key={list.title}
          {...list}
          rubric={rubric}
          exercises={exercises}
          findings={session.findings}
          exerciseOf={() => grade.exercise}
        />
      ))}
    </section>
  );
}
