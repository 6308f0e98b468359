import { useEffect, useMemo, useRef } from 'react';
import { useShallow } from 'zustand/react/shallow';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { EntryGrade } from '../../../engine/grading/grade.ts';
import type { Entry } from '../../../engine/review/review.ts';
import { points, share } from '../../base/figures.ts';
import type { Column } from '../../state/cursorState.ts';
import { cursorState } from '../../state/cursorState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayScorecard } from '../../words/sayScorecard.ts';
import { visitCell } from '../commands/flagging.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { columnKey, columnWords, sameColumn } from '../model/columns.ts';
import { type ScorecardModel, scorecardModel } from '../model/scorecardModel.ts';
import { ScorecardCell } from './ScorecardCell.tsx';

type ScorecardProps = {
  readonly entry: Entry;
  readonly grade: EntryGrade;
  readonly catalogue: Catalogue;
};

/** Reps across, criteria down: where the coach judges, and where the grade can be read off. */
export function Scorecard({ entry, grade, catalogue }: ScorecardProps) {
  const onStage = reviewState((state) => state.clipId);
  const model = useMemo(() => scorecardModel(entry, grade, catalogue, onStage), [entry, grade, catalogue, onStage]);
  const cursor = cursorState(useShallow(({ criterion, column }) => ({ criterion, column })));
  const chosen = cursorState((state) => state.chosenReps);
  const table = useRef<HTMLTableElement>(null);
  const isChosen = ({ clipId, rep }: Column): boolean =>
    rep !== 'set' && clipId === cursor.column?.clipId && chosen.includes(rep);

  // The focus goes with the cursor, unless the coach is busy in another control.
  useEffect(() => {
    const cell = table.current?.querySelector<HTMLElement>('[data-cursor=true]');
    const active = document.activeElement;
    const free = active === document.body || active?.tagName === 'H1' || table.current?.contains(active) === true;
    if (cell != null && free && cursor.criterion !== null) cell.focus({ preventScroll: true });
    cell?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [cursor]);

  return (
    <div className="scorecard-scroll">
      <table className="scorecard" role="grid" aria-label={sayScorecard('scorecard')} ref={table}>
        <ScorecardHead model={model} criterion={cursor.criterion} isChosen={isChosen} />
        <tbody>
          {model.rows.map((row) => (
            <tr key={row.criterion} data-applicable={row.applicable} data-looked-at={row.lookedAt}>
              <th scope="row">
                <span className="criterion-name">{row.name}</span>
                <span className="criterion-share" title={sayScorecard('shareHint')}>
                  {share(row.share)}
                </span>
              </th>
              {row.cells.map((cell) => (
                <ScorecardCell
                  key={columnKey(cell.column)}
                  cell={cell}
                  row={row}
                  where={columnWords(cell.column, model.clips)}
                  selected={row.criterion === cursor.criterion && sameColumn(cell.column, cursor.column)}
                />
              ))}
              <td className="total" data-testid={`criterion-total-${row.criterion}`}>
                {row.score === null ? (
                  <NoScore why={row.applicable ? null : sayScorecard('notVisible')} />
                ) : (
                  points(row.score)
                )}
              </td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{sayScorecard('repScore')}</th>
            {model.columns.map(({ column, total }) => (
              <td key={columnKey(column)} className="total" data-total-rep={column.rep} data-clip={column.clipId}>
                {total === null ? '' : points(total)}
              </td>
            ))}
            <td className="total grand" data-testid="weighted-mean">
              {model.weightedMean === null ? '–' : points(model.weightedMean)}
            </td>
          </tr>
        </tfoot>
      </table>
    </div>
  );
}

/** A dash; where no clip can show the criterion, a hint says so. */
function NoScore({ why }: { readonly why: string | null }) {
  return (
    <span className="soft" title={why ?? undefined}>
      <span aria-hidden={why !== null}>–</span>
      {why !== null && <span className="visually-hidden">{why}</span>}
    </span>
  );
}

type ScorecardHeadProps = {
  readonly model: ScorecardModel;
  readonly criterion: string | null;
  readonly isChosen: (column: Column) => boolean;
};

function ScorecardHead({ model, criterion, isChosen }: ScorecardHeadProps) {
  const context = useReview();
  const firstCriterion = criterion ?? model.rows[0]?.criterion ?? '';
  return (
    <thead>
      {model.clips.length > 1 && (
        <tr className="clip-heads">
          <td />
          {model.clips.map((clip, index) => (
            <th key={clip.id} scope="colgroup" colSpan={clip.reps.length + 1}>
              {sayScorecard('setNumber', { set: index + 1 })}
            </th>
          ))}
          <td />
        </tr>
      )}
      <tr>
        <th scope="col">{sayScorecard('criterion')}</th>
        {model.columns.map(({ column, label }) => (
          <th key={columnKey(column)} scope="col" data-first={column.rep === 'set'}>
            <button
              type="button"
              className="rep-head"
              tabIndex={-1}
              aria-label={sayScorecard(isChosen(column) ? 'goToChosen' : 'goTo', {
                column: columnWords(column, model.clips),
              })}
              data-chosen={isChosen(column)}
              onClick={() => visitCell(context, firstCriterion, column)}
            >
              {label}
            </button>
          </th>
        ))}
        <th scope="col">{sayScorecard('score')}</th>
      </tr>
    </thead>
  );
}
