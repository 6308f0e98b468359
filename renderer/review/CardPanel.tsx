import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../engine/exercises/exercise.ts';
import type { EntryGrade } from '../../engine/grading/grade.ts';
import type { Entry } from '../../engine/review/review.ts';
import type { ReviewData } from '../state/reviewState.ts';
import { CellPanel } from './flags/CellPanel.tsx';
import { GradePanel } from './scorecard/GradePanel.tsx';
import { LeftToSee } from './scorecard/LeftToSee.tsx';
import { Scorecard } from './scorecard/Scorecard.tsx';
import { WeightBar } from './scorecard/WeightBar.tsx';
import { RubricPicker } from './session/RubricPicker.tsx';

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
          <WeightBar />
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
