import type { ReactNode } from 'react';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { EntryGrade, SessionGrade } from '../../../engine/grading/grade.ts';
import { toldRange } from '../../../engine/grading/toldRange.ts';
import { sayMissingGrade } from '../../../engine/wording/sayGrade.ts';
import { points, share } from '../../base/figures.ts';
import { ByHand, GradeMark, RaiseList, ScoreFormula } from '../../grade/GradeParts.tsx';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayGrade } from '../../words/sayGrade.ts';

type GradePanelProps = {
  readonly grade: EntryGrade;
  readonly session: SessionGrade;
  readonly exercise: Exercise | null;
  readonly catalogue: Catalogue;
  /** Facts about the session's grade to go with its letter. */
  readonly children: ReactNode;
};

/** How many cells of the scorecard were looked at: "12 of 60 cells". */
function cellsSeen({ criteria }: EntryGrade): string {
  const sumOf = (which: 'lookedAt' | 'applicable') => criteria.reduce((sum, { cells }) => sum + cells[which], 0);
  return sayGrade('cells', { seen: sumOf('lookedAt'), all: sumOf('applicable') });
}

/** The exercise's grade as it stands now, the sum it came from, and what would raise it. */
export function GradePanel({ grade, session, exercise, catalogue, children }: GradePanelProps) {
  const range = toldRange(grade);
  return (
    <section className="grade-panel" aria-label={sayGrade('grade')}>
      <div className="grade-line">
        <GradeMark state={grade.state} testId="entry-grade" />
        <div>
          <div className="grade-title">{exercise?.name ?? grade.exercise}</div>
          {grade.state.kind !== 'none' && (
            <div className="figure">{sayGrade('points', { points: points(grade.state.score) })}</div>
          )}
          {grade.state.kind === 'provisional' && <div className="provisional">{sayGrade('provisional')}</div>}
        </div>
      </div>
      <ByHand override={grade.override} />
      {grade.state.kind === 'none' && (
        <p className="soft">{sayMissingGrade(grade.state.reason, deskLanguage.getState().language)}</p>
      )}
      <ScoreFormula grade={grade} catalogue={catalogue} />
      <dl className="grade-facts">
        <div>
          <dt>{sayGrade('lookedAt')}</dt>
          <dd data-testid="coverage">
            {share(grade.coverage)}
            {catalogue.rubric.lookedAt === 'cell' && <span className="soft"> {cellsSeen(grade)}</span>}
          </dd>
        </div>
        {range !== null && (
          <div>
            <dt>{sayGrade('liesBetween')}</dt>
            <dd>{sayGrade('lowAndHigh', { low: points(range.low), high: points(range.high) })}</dd>
          </div>
        )}
        <div>
          <dt>{sayGrade('session')}</dt>
          <dd data-testid="session-grade">
            {session.state.kind === 'none'
              ? '–'
              : sayGrade('sessionGrade', {
                  mark: session.state.mark,
                  score: points(session.state.score),
                  provisional: session.state.kind === 'provisional' ? 'yes' : 'no',
                  byHand: session.override === null ? 'no' : 'yes',
                })}
          </dd>
        </div>
        {children}
      </dl>
      {[
        { title: sayGrade('wouldRaiseExercise'), raises: grade.raises },
        // What no single exercise gains by: findings about the plan, and the stops of several exercises.
        { title: sayGrade('wouldRaiseSession'), raises: session.raises.filter(({ kind }) => kind !== 'group') },
      ].map((list) => (
        <RaiseList
          key={list.title}
          {...list}
          catalogue={catalogue}
          findings={session.findings}
          exerciseOf={() => grade.exercise}
        />
      ))}
    </section>
  );
}
