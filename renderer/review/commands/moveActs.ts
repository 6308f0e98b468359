import { clipOf, entryOfClip } from '../../../engine/review/parts.ts';
import { reviewState } from '../../state/reviewState.ts';
import { tablesState } from '../../state/tablesState.ts';
import { type CellMove, judgedAtLongEnd, moveCell } from '../model/cellMoves.ts';
import type { Column } from '../model/columns.ts';
import { columnsOfClip, sameColumn } from '../model/columns.ts';
import { frameOfMoment, repAtFrame } from '../model/repAtFrame.ts';
import { cursorState } from '../state/cursorState.ts';
import { playerState } from '../state/playerState.ts';
import { playhead } from '../state/playhead.ts';
import { currentPlayer } from './activePlayer.ts';
import { here } from './here.ts';

/** Puts a frame of a clip on the stage, changing the clip where needed. */
export function goToFrame(clipId: string, frame: number): void {
  if (reviewState.getState().clipId === clipId) currentPlayer()?.seekTo(frame);
  else reviewState.getState().show({ clipId, frame });
}

function seekToColumn(criterion: string, column: Column): void {
  const { data, clipId } = reviewState.getState();
  const entry = data === null ? undefined : entryOfClip(data.review, column.clipId);
  const clip = entry === undefined ? undefined : clipOf(entry, column.clipId);
  const rep = clip?.reps.find((known) => known.index === column.rep);
  if (rep === undefined) {
    if (clipId !== column.clipId) reviewState.getState().show({ clipId: column.clipId, frame: 0 });
    return;
  }
  const moment = judgedAtLongEnd(criterion) ? (rep.longEnd ?? rep.start) : rep.start;
  const table = tablesState.getState().tables[column.clipId]?.table;
  if (table !== undefined) goToFrame(column.clipId, frameOfMoment(moment, table));
  else if ('frame' in moment) goToFrame(column.clipId, moment.frame);
}

/** Moves to a cell; another rep is also shown, at its start, or at its long end where that is what is judged. */
function goToCell(criterion: string, column: Column): void {
  const before = cursorState.getState().column;
  cursorState.getState().moveTo(criterion, column);
  if (!sameColumn(before, column)) seekToColumn(criterion, column);
}

/** Goes to a cell that was pointed at: always shown, also when the cursor stood there already. */
export function visitCell(criterion: string, column: Column): void {
  cursorState.getState().moveTo(criterion, column);
  seekToColumn(criterion, column);
}

/** Moves by a key, within the columns of all clips of the exercise. */
export function move(how: CellMove): void {
  const now = here();
  if (now === null) return;
  const criteria = now.grade.criteria.map((scored) => scored.criterion);
  const place = moveCell(criteria, now.entry.clips.flatMap(columnsOfClip), cursorState.getState(), how);
  if (place !== null) goToCell(place.criterion, place.column);
}

/** Shows the clip before or after the one on the stage, in the order of the session. */
export function changeClip(direction: 'previous' | 'next'): void {
  const { data, clipId, show } = reviewState.getState();
  const clips = data?.review.entries.flatMap((entry) => entry.clips) ?? [];
  const at = clips.findIndex((clip) => clip.id === clipId);
  const next = clips[at + (direction === 'next' ? 1 : -1)];
  if (next !== undefined) show({ clipId: next.id, frame: 0 });
}

/** Keeps the card's column on the rep that is on screen, unless the coach is judging the whole set. */
export function followPlayhead(): void {
  const { clipId, frame, settled } = playhead.getState();
  const now = here();
  if (now === null || now.tables === null || now.clip.id !== clipId) return;
  if (!settled && playerState.getState().playing === 'no') return;
  const { column, followRep, namingFlagId } = cursorState.getState();
  if (namingFlagId !== null || column === null || column.rep === 'set') return;
  const rep = repAtFrame(now.clip.reps, frame, now.tables.table);
  if (rep === null || (column.clipId === clipId && column.rep === rep)) return;
  followRep({ clipId, rep });
}

/** Puts the cursor on the card of the clip on the stage, where it isn't already. */
export function settleCursor(): void {
  const now = here();
  if (now === null) return;
  const { criterion, column, moveTo } = cursorState.getState();
  const criteria = now.grade.criteria.map((scored) => scored.criterion);
  const columns = columnsOfClip(now.clip);
  const keptCriterion = criterion !== null && criteria.includes(criterion) ? criterion : criteria[0];
  const keptColumn = columns.find((known) => sameColumn(known, column)) ?? columns[1] ?? columns[0];
  if (keptCriterion === undefined || keptColumn === undefined) return;
  if (keptCriterion !== criterion || !sameColumn(keptColumn, column)) moveTo(keptCriterion, keptColumn);
}
