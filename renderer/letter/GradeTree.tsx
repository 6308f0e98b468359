import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { CriterionScore, EntryGrade, SessionGrade } from '../../engine/grading/grade.ts';
import { toldRange } from '../../engine/grading/toldRange.ts';
import type { Entry, Review } from '../../engine/review/review.ts';
import type { Rubric } from '../../engine/rubric/rubric.ts';
import { programmeRule } from '../../engine/rubric/rules.ts';
import { criterionName } from '../../engine/sheet/flagRows.ts';
import { sayFinding, sayMissingGrade } from '../../engine/wording/sayGrade.ts';
import { plain, points, share } from '../base/figures.ts';
import { Strokes } from '../base/Strokes.tsx';
import { GradeMark, RaiseList, ScoreFormula } from '../grade/GradeParts.tsx';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayGradeTree } from '../words/sayGradeTree.ts';
import { GradeByHand } from './GradeByHand.tsx';

type GradeTreeProps = { readonly review: Review; readonly grade: SessionGrade; readonly catalogue: Catalogue };

/** The session's grade opened up: parts, exercises, criteria, reps, flags. */
export function GradeTree({ review, grade, catalogue }: GradeTreeProps) {
  const { rubric } = catalogue;
  const { technique, programme } = grade;
  const range = toldRange(grade);
  const language = deskLanguage((state) => state.language);
  return (
    <section className="grade-tree">
      <h2>{sayGradeTree('grade')}</h2>
      <div className="grade-line">
        <GradeMark state={grade.state} testId="session-mark" />
        <div>
          {grade.state.kind === 'none' ? (
            <span className="soft">{sayMissingGrade(grade.state.reason, language)}</span>
          ) : (
            <div className="figure">{sayGradeTree('pointCount', { points: points(grade.state.score) })}</div>
          )}
          {grade.state.kind === 'provisional' && <div className="provisional">{sayGradeTree('provisional')}</div>}
          {range !== null && (
            <div className="soft">
              {sayGradeTree('liesBetween', { low: points(range.low), high: points(range.high) })}
            </div>
          )}
        </div>
      </div>
      <GradeByHand
        sessionId={review.session.id}
        entryId={null}
        of={sayGradeTree('session')}
        set={review.session.override ?? null}
        override={grade.override}
      />
      {technique !== null && (
        <p className="formula">
          <span className="figure">{sessionSum(technique, programme, rubric)}</span>
          {programme !== null && <span className="soft">{sayGradeTree('techniqueAndProgramme')}</span>}
          {grade.cappedByStop && <strong>{sayGradeTree('stopCap', { points: plain(rubric.stopCap.session) })}</strong>}
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
          <summary>{programmeInShort(grade)}</summary>
          <ul className="findings">
            {grade.findings.map((finding) => {
              const { what, suggestion } = sayFinding(finding, language);
              return (
                <li key={finding.id}>
                  <Strokes severity={finding.severity} /> {what} <span className="soft">{suggestion}</span>
                </li>
              );
            })}
          </ul>
        </details>
      )}
      <RaiseList
        title={sayGradeTree('raises')}
        raises={grade.raises}
        catalogue={catalogue}
        findings={grade.findings}
        exerciseOf={(entryId) => review.entries.find((entry) => entry.id === entryId)?.exercise ?? ''}
      />
      <p className="soft">
        {sayGradeTree('rubric', {
          rubric: rubric.name,
          version: grade.rubric.version,
          share: share(meanCoverage(grade)),
        })}
      </p>
    </section>
  );
}

/** How the session's score comes about, before a cap. */
function sessionSum(technique: number, programme: number | null, rubric: Rubric): string {
  if (programme === null) return sayGradeTree('techniqueAlone', { points: points(technique) });
  const rule = programmeRule(rubric);
  if (rule.kind === 'cost') {
    const cost = 100 - programme;
    return `${points(technique)} − ${plain(cost)} = ${points(Math.max(0, technique - cost))}`;
  }
  const sum = rule.technique * technique + rule.programme * programme;
  return `${plain(rule.technique)} × ${points(technique)} + ${plain(rule.programme)} × ${points(programme)} = ${points(sum)}`;
}

/** What the programme is worth, or what it costs. */
function programmeInShort({ programme, programmeCost }: SessionGrade): string {
  if (programmeCost !== null) return sayGradeTree('programmeCosts', { points: plain(programmeCost) });
  return sayGradeTree('programme', { points: programme === null ? '' : points(programme) });
}

const meanCoverage = (grade: SessionGrade): number =>
  grade.entries.length === 0 ? 0 : grade.entries.reduce((sum, entry) => sum + entry.coverage, 0) / grade.entries.length;

type EntryTreeProps = {
  readonly sessionId: string;
  readonly entry: Entry;
  readonly grade: EntryGrade;
  readonly catalogue: Catalogue;
};

/** One exercise of the tree: how its score is made, criterion by criterion. */
function EntryTree({ sessionId, entry, grade, catalogue }: EntryTreeProps) {
  const language = deskLanguage((state) => state.language);
  const exercise = catalogue.exercises.find((known) => known.id === entry.exercise);
  const faultName = (id: string | null): string =>
    exercise?.faults.find((fault) => fault.id === id)?.name ?? sayGradeTree('noFault');
  const mark = grade.state.kind === 'none' ? '–' : `${grade.state.mark} ${points(grade.state.score)}`;
  return (
    <details className="entry-tree" open>
      <summary>
        {exercise?.name ?? entry.exercise} <strong>{mark}</strong>
        {grade.state.kind === 'provisional' && <span className="soft"> {sayGradeTree('provisional')}</span>}
      </summary>
      <GradeByHand
        sessionId={sessionId}
        entryId={entry.id}
        of={exercise?.name ?? entry.exercise}
        set={entry.override ?? null}
        override={grade.override}
      />
      {grade.state.kind === 'none' && <p className="soft">{sayMissingGrade(grade.state.reason, language)}</p>}
      <ScoreFormula grade={grade} catalogue={catalogue} />
      <ul>
        {grade.criteria.map((scored) => (
          <CriterionBranch
            key={scored.criterion}
            scored={scored}
            name={criterionName(catalogue, scored.criterion, grade.exercise)}
            clipNames={new Map(entry.clips.map((clip, index) => [clip.id, sayGradeTree('set', { set: index + 1 })]))}
            faultName={faultName}
          />
        ))}
      </ul>
    </details>
  );
}

type CriterionBranchProps = {
  readonly scored: CriterionScore;
  readonly name: string;
  readonly clipNames: ReadonlyMap<string, string>;
  readonly faultName: (id: string | null) => string;
};

function CriterionBranch({ scored, name, clipNames, faultName }: CriterionBranchProps) {
  const flagged = scored.reps.filter((unit) => unit.flags.length > 0);
  const score =
    scored.score === null ? sayGradeTree(scored.applicable ? 'notLookedAt' : 'notVisible') : points(scored.score);
  const { lookedAt, applicable } = scored.cells;
  const partly = lookedAt > 0 && lookedAt < applicable;
  const head = (
    <>
      {name} <span className="soft">{sayGradeTree('counts', { share: share(scored.share) })}</span>{' '}
      <span className="figure">{score}</span>
      {partly && <span className="soft"> {sayGradeTree('partly', { lookedAt, applicable })}</span>}
    </>
  );
  if (flagged.length === 0) return <li>{head}</li>;
  return (
    <li>
      <details>
        <summary>{head}</summary>
        <ul>
          {flagged.map((unit) => (
            <li key={`${unit.clip}/${unit.rep}`}>
              {unit.rep === null
                ? clipNames.get(unit.clip)
                : sayGradeTree('setAndRep', { set: clipNames.get(unit.clip) ?? '', rep: unit.rep })}
              : <span className="figure">{points(unit.score)}</span>
              {unit.flags.map((flag) => (
                <span key={flag.flagId} className="flag-cost">
                  <Strokes severity={flag.severity} />{' '}
                  {flag.severity === 'keep' ? sayGradeTree('kept') : faultName(flag.fault)}{' '}
                  <span className="soft">{sayGradeTree('costs', { points: plain(flag.cost) })}</span>
                </span>
              ))}
            </li>
          ))}
        </ul>
      </details>
    </li>
  );
}
