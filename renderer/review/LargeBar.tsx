import { Minimize2 } from 'lucide-react';
import { useMemo } from 'react';
import { useShallow } from 'zustand/react/shallow';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../engine/exercises/exercise.ts';
import type { EntryGrade } from '../../engine/grading/grade.ts';
import type { Entry } from '../../engine/review/review.ts';
import { points } from '../base/figures.ts';
import { FineTick, Strokes } from '../base/Strokes.tsx';
import { GradeMark } from '../grade/GradeParts.tsx';
import { cursorState } from '../state/cursorState.ts';
import { sayFlags } from '../words/sayFlags.ts';
import { sayGrade } from '../words/sayGrade.ts';
import { sayStage } from '../words/sayStage.ts';
import { largePicture } from './commands/arranging.ts';
import { ReviewButton } from './commands/ReviewDeskProvider.tsx';
import { CellPanel } from './flags/CellPanel.tsx';
import { columnWords, sameColumn } from './model/columns.ts';
import { type Cell, scorecardModel } from './model/scorecardModel.ts';
import { SeverityBar } from './scorecard/SeverityBar.tsx';

type LargeBarProps = {
  readonly entry: Entry;
  readonly grade: EntryGrade;
  readonly exercise: Exercise | null;
  readonly catalogue: Catalogue;
  readonly readOnly: boolean;
};

/** What stays under a large picture: the severities, the cell at hand and the score. The cell's flags open over the picture while they are worked on. */
export function LargeBar({ entry, grade, exercise, catalogue, readOnly }: LargeBarProps) {
  return (
    <>
      <section className="large-bar" aria-label={sayStage('slimBar')}>
        {!readOnly && <SeverityBar />}
        <CellAtHand entry={entry} grade={grade} catalogue={catalogue} />
        <span className="large-score">
          <GradeMark state={grade.state} testId="entry-grade" />
          {grade.state.kind !== 'none' && (
            <span className="figure">{sayGrade('points', { points: points(grade.state.score) })}</span>
          )}
        </span>
        <ReviewButton command={largePicture} pressed words={sayStage('smallAgain')}>
          <Minimize2 aria-hidden="true" />
        </ReviewButton>
      </section>
      <div className="large-cell">
        <CellPanel entry={entry} exercise={exercise} catalogue={catalogue} readOnly={readOnly} />
      </div>
    </>
  );
}

type CellAtHandProps = Pick<LargeBarProps, 'entry' | 'grade' | 'catalogue'>;

/** Where the scorecard's cursor is, and what that cell holds; said as it moves. */
function CellAtHand({ entry, grade, catalogue }: CellAtHandProps) {
  const model = useMemo(() => scorecardModel(entry, grade, catalogue), [entry, grade, catalogue]);
  const { criterion, column } = cursorState(useShallow(({ criterion, column }) => ({ criterion, column })));
  const row = model.rows.find((known) => known.criterion === criterion);
  const cell = row?.cells.find((known) => sameColumn(known.column, column));
  return (
    <output className="large-cell-at-hand" data-testid="cell-at-hand">
      {row !== undefined && cell !== undefined && (
        <>
          {sayFlags('cell', { criterion: row.name, column: columnWords(cell.column, model.clips) })} <Marks of={cell} />
        </>
      )}
    </output>
  );
}

function Marks({ of: { flags, fromSet, ticked, tickedBySet } }: { readonly of: Cell }) {
  const held = [...flags, ...fromSet];
  if (held.length === 0) return ticked || tickedBySet ? <FineTick /> : null;
  return held.map((flag) => <Strokes key={flag.id} severity={flag.severity} />);
}
