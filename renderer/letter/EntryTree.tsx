import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { CriterionScore, EntryGrade } from '../../engine/grading/grade.ts';
import type { Entry } from '../../engine/review/review.ts';
import { sayMissingGrade } from '../../engine/wording/sayGrade.ts';
import { plain, points, share } from '../base/figures.ts';
import { Strokes } from '../base/Strokes.tsx';
import { ScoreFormula } from '../grade/GradeParts.tsx';
import { GradeByHand } from './GradeByHand.tsx';

type EntryTreeProps = {
  readonly sessionId: string;
  readonly entry: Entry;
  readonly grade: EntryGrade;
  readonly catalogue: Catalogue;
};

/** One exercise of the tree: how its score is made, criterion by criterion. */
export function EntryTree({ sessionId, entry, grade, catalogue }: EntryTreeProps) {
  const exercise = catalogue.exercises.find((known) => known.id === entry.exercise);
  const faultName = (id: string | null): string =>
    exercise?.faults.find((fault) => fault.id === id)?.name ?? 'no named fault';
  const mark = grade.state.kind === 'none' ? '–' : `${grade.state.mark} ${points(grade.state.score)}`;
  return (
    <details className="entry-tree" open>
      <summary>
        {exercise?.name ?? entry.exercise} <strong>{mark}</strong>
        {grade.state.kind === 'provisional' && <span className="soft"> provisional</span>}
      </summary>
      <GradeByHand
        sessionId={sessionId}
        entryId={entry.id}
        of={exercise?.name ?? entry.exercise}
        set={entry.override ?? null}
        override={grade.override}
      />
      {grade.state.kind === 'none' && <p className="soft">{sayMissingGrade(grade.state.reason, 'en')}</p>}
      <ScoreFormula grade={grade} rubric={catalogue.rubric} />
      <ul>
        {grade.criteria.map((scored) => (
          <CriterionBranch
            key={scored.criterion}
            scored={scored}
            name={catalogue.rubric.criteria.find((known) => known.id === scored.criterion)?.name ?? scored.criterion}
            clipNames={new Map(entry.clips.map((clip, index) => [clip.id, `set ${index + 1}`]))}
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
  const score = scored.score === null ? (scored.applicable ? 'not looked at' : 'not seen') : points(scored.score);
  const head = (
    <>
      {name} <span className="soft">share {share(scored.share)}</span> <span className="figure">{score}</span>
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
              {clipNames.get(unit.clip) ?? ''}
              {unit.rep === null ? '' : `, rep ${unit.rep}`}: <span className="figure">{points(unit.score)}</span>
              {unit.flags.map((flag) => (
                <span key={flag.flagId} className="flag-cost">
                  <Strokes weight={flag.weight} /> {flag.weight === 'keep' ? 'kept' : faultName(flag.fault)}{' '}
                  <span className="soft">costs {plain(flag.cost)}</span>
                </span>
              ))}
            </li>
          ))}
        </ul>
      </details>
    </li>
  );
}
