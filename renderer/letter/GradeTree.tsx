import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { SessionGrade } from '../../engine/grading/grade.ts';
import type { Review } from '../../engine/review/review.ts';
import { sayFinding, sayMissingGrade } from '../../engine/wording/sayGrade.ts';
import { plain, points, share } from '../base/figures.ts';
import { Strokes } from '../base/Strokes.tsx';
import { GradeMark, RaiseList } from '../grade/GradeParts.tsx';
import { EntryTree } from './EntryTree.tsx';
import { GradeByHand } from './GradeByHand.tsx';

type GradeTreeProps = { readonly review: Review; readonly grade: SessionGrade; readonly catalogue: Catalogue };

/** The session's grade opened up: parts, exercises, criteria, reps, flags. */
export function GradeTree({ review, grade, catalogue }: GradeTreeProps) {
  const { rubric, exercises } = catalogue;
  const { technique, programme } = grade;
  return (
    <section className="grade-tree">
      <h2>Grade</h2>
      <div className="grade-line">
        <GradeMark state={grade.state} testId="session-mark" />
        <div>
          {grade.state.kind === 'none' ? (
            <span className="soft">{sayMissingGrade(grade.state.reason, 'en')}</span>
          ) : (
            <div className="figure">{points(grade.state.score)} points</div>
          )}
          {grade.state.kind === 'provisional' && <div className="provisional">provisional</div>}
          {grade.range !== null && grade.range.high - grade.range.low >= 0.05 && (
            <div className="soft">
              can end between {points(grade.range.low)} and {points(grade.range.high)}
            </div>
          )}
        </div>
      </div>
      <GradeByHand
        sessionId={review.session.id}
        entryId={null}
        of="the session"
        set={review.session.override ?? null}
        override={grade.override}
      />
      {technique !== null && (
        <p className="formula">
          <span className="figure">
            {programme === null
              ? `technique alone = ${points(technique)}`
              : `${plain(rubric.sessionShare.technique)} × ${points(technique)} + ${plain(rubric.sessionShare.programme)} × ${points(programme)} = ${points(rubric.sessionShare.technique * technique + rubric.sessionShare.programme * programme)}`}
          </span>
          {programme !== null && <span className="soft">technique, and programme</span>}
          {grade.cappedByStop && <strong>A stop flag holds it at {plain(rubric.stopCap.session)}.</strong>}
        </p>
      )}
      {review.entries.map((entry) => {
        const entryGrade = grade.entries.find((known) => known.entryId === entry.id);
        if (entryGrade === undefined) return null;
        return (
          <EntryTree
            key={entry.id}
            sessionId={review.session.id}
            entry={entry}
            grade={entryGrade}
            catalogue={catalogue}
          />
        );
      })}
      {grade.findings.length > 0 && (
        <details>
          <summary>Programme {programme === null ? '' : points(programme)}</summary>
          <ul className="findings">
            {grade.findings.map((finding) => {
              const { what, suggestion } = sayFinding(finding, 'en');
              return (
                <li key={finding.id}>
                  <Strokes weight={finding.weight} /> {what} <span className="soft">{suggestion}</span>
                </li>
              );
            })}
          </ul>
        </details>
      )}
      <RaiseList
        raises={grade.raises}
        rubric={rubric}
        exercises={exercises}
        exerciseOf={(entryId) => review.entries.find((entry) => entry.id === entryId)?.exercise ?? ''}
      />
      <p className="soft">
        {rubric.name}, version {grade.rubric.version}. Looked at: {share(meanCoverage(grade))}.
      </p>
    </section>
  );
}

const meanCoverage = (grade: SessionGrade): number =>
  grade.entries.length === 0 ? 0 : grade.entries.reduce((sum, entry) => sum + entry.coverage, 0) / grade.entries.length;
