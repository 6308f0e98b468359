import { useMemo } from 'react';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../engine/exercises/exercise.ts';
import type { EntryGrade } from '../../engine/grading/grade.ts';
import type { Entry, Review } from '../../engine/review/review.ts';
import type { Severity } from '../../engine/rubric/rubric.ts';
import { withinSentence } from '../../engine/wording/wordings.ts';
import { FineTick, Strokes } from '../base/Strokes.tsx';
import { mutate } from '../bridge/mutate.ts';
import { catalogueState } from '../state/catalogueState.ts';
import type { ReviewData } from '../state/reviewState.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayScorecard } from '../words/sayScorecard.ts';
import { fine, severityCommands } from './commands/judging.ts';
import { fineRest, nextToJudge } from './commands/leftToJudge.ts';
import { ReviewButton } from './commands/ReviewDeskProvider.tsx';
import { CellPanel } from './flags/CellPanel.tsx';
import { scorecardModel } from './model/scorecardModel.ts';
import { cellsToSee, unseenCells } from './model/unseen.ts';
import { GradePanel } from './scorecard/GradePanel.tsx';
import { Scorecard } from './scorecard/Scorecard.tsx';
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
    <>
      <Scorecard entry={entry} grade={grade} catalogue={catalogue} />
      {!data.readOnly && <SeverityBar />}
      <SeverityKey />
      {!data.readOnly && <LeftToSee entry={entry} grade={grade} catalogue={catalogue} />}
      <div className="review-below">
        <CellPanel entry={entry} exercise={exercise} catalogue={catalogue} readOnly={data.readOnly} />
        <GradePanel grade={grade} session={data.grade} exercise={exercise} catalogue={catalogue}>
          {!data.readOnly && <RubricPicker sessionId={sessionId} review={data.review} />}
        </GradePanel>
      </div>
    </>
  );
}

/** The halves of the bar: where it has no room for one row, it has two of the same length. */
const light: readonly Severity[] = ['keep', 'prefer'];
const grave: readonly Severity[] = ['adjust', 'correct', 'stop'];

function SeverityButtons({ of }: { readonly of: readonly Severity[] }) {
  return of.map((severity) => (
    <ReviewButton key={severity} command={severityCommands[severity]} severity={severity}>
      <Strokes severity={severity} named="elsewhere" />
    </ReviewButton>
  ));
}

/** The marks a cell can get, with their keys: the same commands for the mouse. */
export function SeverityBar() {
  return (
    <fieldset className="severity-bar" aria-label={sayScorecard('markCell')}>
      <div className="severity-half">
        <ReviewButton command={fine}>
          <FineTick named="elsewhere" />
        </ReviewButton>
        <SeverityButtons of={light} />
      </div>
      <div className="severity-half">
        <SeverityButtons of={grave} />
      </div>
    </fieldset>
  );
}

type LeftToSeeProps = { readonly entry: Entry; readonly grade: EntryGrade; readonly catalogue: Catalogue };

/** How much of the card is left to judge, buttons to get there, and what no clip can show. */
function LeftToSee({ entry, grade, catalogue }: LeftToSeeProps) {
  const model = useMemo(() => scorecardModel(entry, grade, catalogue), [entry, grade, catalogue]);
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
