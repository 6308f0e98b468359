import { useMemo } from 'react';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../engine/exercises/exercise.ts';
import type { EntryGrade } from '../../engine/grading/grade.ts';
import type { Entry, Review } from '../../engine/review/review.ts';
import { withinSentence } from '../../engine/wording/wordings.ts';
import { mutate } from '../bridge/mutate.ts';
import { catalogueState } from '../state/catalogueState.ts';
import { type ReviewData, reviewState } from '../state/reviewState.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayScorecard } from '../words/sayScorecard.ts';
import { fineRest, nextToJudge } from './commands/leftToJudge.ts';
import { ReviewButton } from './commands/ReviewDeskProvider.tsx';
import { CellPanel } from './flags/CellPanel.tsx';
import { scorecardModel } from './model/scorecardModel.ts';
import { cellsToSee, unseenCells } from './model/unseen.ts';
import { GradePanel } from './scorecard/GradePanel.tsx';
import { Scorecard } from './scorecard/Scorecard.tsx';
import { SeverityBar } from './scorecard/SeverityBar.tsx';
import { SeverityKey } from './scorecard/SeverityKey.tsx';

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
  return (
    <div className="card-panel">
      <div className="card-parts">
        <div className="card-marks">
          <Scorecard entry={entry} grade={grade} catalogue={catalogue} />
          {!data.readOnly && <SeverityBar />}
          <SeverityKey />
          {!data.readOnly && <LeftToSee entry={entry} grade={grade} catalogue={catalogue} />}
        </div>
        <div className="review-below">
          <CellPanel entry={entry} exercise={exercise} catalogue={catalogue} readOnly={data.readOnly} />
          <GradePanel grade={grade} session={data.grade} exercise={exercise} catalogue={catalogue}>
            {!data.readOnly && <RubricPicker sessionId={sessionId} review={data.review} />}
          </GradePanel>
        </div>
      </div>
    </div>
  );
}

type LeftToSeeProps = { readonly entry: Entry; readonly grade: EntryGrade; readonly catalogue: Catalogue };

/** How much of the card is left to judge, buttons to get there, and what no clip can show. */
function LeftToSee({ entry, grade, catalogue }: LeftToSeeProps) {
  const onStage = reviewState((state) => state.clipId);
  const model = useMemo(() => scorecardModel(entry, grade, catalogue, onStage), [entry, grade, catalogue, onStage]);
  const left = unseenCells(model).length;
  const all = cellsToSee(model).length;
  const hidden = model.rows
    .filter((row) => !row.applicable)
    .map(({ name }) => withinSentence(deskLanguage.getState().language, name));
  return (
    <div className="left-to-see" data-testid="left-to-see">
      <span>
        {sayScorecard('left', { left, all })}{' '}
        {hidden.length > 0 && <span className="soft">{sayScorecard('inNoClip', { criteria: hidden })}</span>}
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
      <dt>{sayScorecard('rubric')}</dt>
      <dd>
        <select
          aria-label={sayScorecard('rubric')}
          title={sayScorecard('rubricHint')}
          value={version}
          onChange={(event) => void mutate('sessions.rejudge', { sessionId, version: Number(event.target.value) })}
        >
          {versions.map((known) => (
            <option key={known} value={known}>
              {sayScorecard('rubricVersion', { version: known })}
            </option>
          ))}
        </select>
      </dd>
    </div>
  );
}
