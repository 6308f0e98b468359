import { memo } from 'react';
import { isJudging } from '../../../engine/review/parts.ts';
import type { Flag } from '../../../engine/review/review.ts';
import { points } from '../../base/figures.ts';
import { FineTick, Strokes } from '../../base/Strokes.tsx';
import { sayScorecard } from '../../words/sayScorecard.ts';
import { saySeverity } from '../../words/saySeverity.ts';
import { visitCell } from '../commands/flagging.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import type { Cell, Row } from '../model/scorecardModel.ts';

type CellProps = { readonly cell: Cell; readonly row: Row; readonly where: string; readonly selected: boolean };

const listed = (flags: readonly Flag[]): string => flags.map((flag) => saySeverity(flag.severity ?? 'note')).join(', ');

const showsScore = ({ score }: Cell): boolean => score !== null && score < 100;

const emptyWords = ({ shown }: Cell): string => sayScorecard(shown ? 'nothingYet' : 'notVisible');

/** What a cell holds, in words. */
function wordsOf({ cell, row, where }: CellProps): string {
  const parts = [
    cell.flags.length > 0 ? listed(cell.flags) : '',
    cell.fromSet.length > 0 ? sayScorecard('onWholeSet', { severities: listed(cell.fromSet) }) : '',
    cell.ticked ? saySeverity('fine') : '',
    cell.tickedBySet && !cell.ticked ? sayScorecard('fineOnSet') : '',
  ].filter((part) => part !== '');
  const said = {
    criterion: row.name,
    column: where,
    held: parts.length > 0 ? parts.join('; ') : emptyWords(cell),
  };
  return showsScore(cell)
    ? sayScorecard('scoredCell', { ...said, score: points(cell.score ?? 0) })
    : sayScorecard('cell', said);
}

const sameSeverities = (one: readonly Flag[], other: readonly Flag[]): boolean =>
  one.length === other.length &&
  one.every(({ id, severity }, index) => id === other[index]?.id && severity === other[index]?.severity);

/** Typing a note changes no cell, so it must not redraw a card of hundreds. */
function looksTheSame(one: CellProps, other: CellProps): boolean {
  const [a, b] = [one.cell, other.cell];
  return (
    one.selected === other.selected &&
    one.where === other.where &&
    one.row.name === other.row.name &&
    a.ticked === b.ticked &&
    a.tickedBySet === b.tickedBySet &&
    a.score === b.score &&
    a.shown === b.shown &&
    a.column.rep === b.column.rep &&
    a.column.clipId === b.column.clipId &&
    sameSeverities(a.flags, b.flags) &&
    sameSeverities(a.fromSet, b.fromSet)
  );
}

/** One cell: strokes, a tick, or nothing yet. */
export const ScorecardCell = memo(CellOfCard, looksTheSame);

function CellOfCard(props: CellProps) {
  const context = useReview();
  const { cell, selected } = props;
  const { flags, fromSet, ticked, tickedBySet, score } = cell;
  const bare = ![...flags, ...fromSet].some(isJudging);
  return (
    <td
      role="gridcell"
      tabIndex={selected ? 0 : -1}
      aria-selected={selected}
      aria-label={wordsOf(props)}
      data-cursor={selected}
      data-criterion={cell.criterion}
      data-rep={cell.column.rep}
      data-clip={cell.column.clipId}
      data-first={cell.column.rep === 'set'}
      onClick={(event) => {
        event.currentTarget.focus();
        visitCell(context, cell.criterion, cell.column);
      }}
    >
      <span className="cell-marks" aria-hidden="true">
        {flags.map((flag) => (
          <Strokes key={flag.id} severity={flag.severity} named="elsewhere" />
        ))}
        {fromSet.map((flag) => (
          <span key={flag.id} className="from-set">
            <Strokes severity={flag.severity} named="elsewhere" />
          </span>
        ))}
        {bare && ticked && <FineTick named="elsewhere" />}
        {bare && !ticked && tickedBySet && (
          <span className="from-set">
            <FineTick named="elsewhere" />
          </span>
        )}
      </span>
      {score !== null && showsScore(cell) && (
        <span className="cell-score" aria-hidden="true">
          {points(score)}
        </span>
      )}
    </td>
  );
}
