import { useMemo } from 'react';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../engine/exercises/exercise.ts';
import type { EntryGrade } from '../../engine/grading/grade.ts';
import type { Entry, Review } from '../../engine/review/review.ts';
import type { Criterion, Severity } from '../../engine/rubric/rubric.ts';
import { FineTick, Strokes } from '../base/Strokes.tsx';
import { mutate } from '../bridge/mutate.ts';
import { catalogueState } from '../state/catalogueState.ts';
import type { ReviewData } from '../state/reviewState.ts';
import { fine, severityCommands } from './commands/judging.ts';
import { fineRest, nextToJudge } from './commands/leftToJudge.ts';
import { ReviewButton } from './commands/ReviewDeskProvider.tsx';
import { CellPanel } from './flags/CellPanel.tsx';
import { scorecardModel } from './model/scorecardModel.ts';
import { cellsToSee, unseenCells } from './model/unseen.ts';
import { GradePanel } from './scorecard/GradePanel.tsx';
import { Scorecard } from './scorecard/Scorecard.tsx';

type CardPanelProps = {
  readonly sessionId: string;
  readonly data: ReviewData;
  readonly entry: Entry;
  readonly grade: EntryGrade;
  readonly exercise: Exercise | null;
  readonly catalogue: Catalogue;
};

/** The scorecard, the flags of its cell, and the grade they add up to. */
export function CardPanel({ sessionId, data, entry, grade, exercise, catalogue }: CardPanelProps) {
  const { rubric, exercises } = catalogue;
  return (
    <>
      <Scorecard entry={entry} grade={grade} criteria={rubric.criteria} />
      {!data.readOnly && (
        <>
          <SeverityBar />
          <LeftToSee entry={entry} grade={grade} criteria={rubric.criteria} />
        </>
      )}
      <div className="review-below">
        <CellPanel entry={entry} exercise={exercise} rubric={rubric} readOnly={data.readOnly} />
        <GradePanel grade={grade} session={data.grade} exercise={exercise} exercises={exercises} rubric={rubric}>
          {!data.readOnly && <RubricPicker sessionId={sessionId} review={data.review} />}
        </GradePanel>
      </div>
    </>
  );
}

const order: readonly Severity[] = ['keep', 'prefer', 'adjust', 'correct', 'stop'];

/** The marks a cell can get, with their keys: the same commands for the mouse. */
export function SeverityBar() {
  return (
    <fieldset className="severity-bar" aria-label="Mark the cell">
      <ReviewButton command={fine}>
        <FineTick named="elsewhere" />
      </ReviewButton>
      {order.map((severity) => (
        <ReviewButton key={severity} command={severityCommands[severity]} severity={severity}>
          <Strokes severity={severity} named="elsewhere" />
        </ReviewButton>
      ))}
    </fieldset>
  );
}

type LeftToSeeProps = { readonly entry: Entry; readonly grade: EntryGrade; readonly criteria: readonly Criterion[] };

/** How much of the card is left to judge, buttons to get there, and what no clip can show. */
function LeftToSee({ entry, grade, criteria }: LeftToSeeProps) {
  const model = useMemo(() => scorecardModel(entry, grade, criteria), [entry, grade, criteria]);
  const left = unseenCells(model).length;
  const all = cellsToSee(model).length;
  const hidden = model.rows.filter((row) => !row.applicable).map((row) => row.name.toLowerCase());
  return (
    <div className="left-to-see" data-testid="left-to-see">
      <span>
        {left === 0 ? 'All looked at.' : `${left} of ${all} cells left to look at.`}{' '}
        {hidden.length > 0 && (
          <span className="soft">No clip is filmed from a side that shows: {hidden.join(', ')}.</span>
        )}
      </span>
      {left > 0 && (
        <>
          <ReviewButton command={nextToJudge} />
          <ReviewButton command={fineRest} />
        </>
      )}
    </div>
  );
}

type RubricPickerProps = { readonly sessionId: string; readonly review: Review };

/** The version of the rubric that judges the session. Choosing another regrades it; undo goes back. */
function RubricPicker({ sessionId, review }: RubricPickerProps) {
  const versions = catalogueState((state) => state.rubricVersions);
  const version = review.rubric?.version ?? versions[0] ?? 1;
  return (
    <div>
      <dt>Rubric</dt>
      <dd>
        <select
          aria-label="Rubric"
          title="Flags go with their faults; a letter that was sent stays as it is"
          value={version}
          onChange={(event) => void mutate('sessions.rejudge', { sessionId, version: Number(event.target.value) })}
        >
          {versions.map((known) => (
            <option key={known} value={known}>
              version {known}
            </option>
          ))}
        </select>
      </dd>
    </div>
  );
}
