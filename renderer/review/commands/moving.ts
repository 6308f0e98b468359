import { clipsOfSet } from '../../../engine/review/camerasOfSet.ts';
import { clipOf, entryOfClip } from '../../../engine/review/parts.ts';
import { frameOfMoment } from '../../../engine/time/frames.ts';
import type { CommandId } from '../../../engine/wording/english/desk/commands.ts';
import type { ReasonId } from '../../../engine/wording/english/desk/reasons.ts';
import { allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { repAtFrame, repFrames } from '../../player/repFrames.ts';
import { tablesState } from '../../state/clipState.ts';
import type { Column } from '../../state/cursorState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import {
  type CellMove,
  clipsOnCard,
  columnsOfClip,
  judgedAtStretchedEnd,
  moveCell,
  sameColumn,
} from '../model/columns.ts';
import { playhead } from '../state/playerState.ts';
import { isOnStage, type ReviewContext } from './reviewContext.ts';

/** Puts a frame of a clip on the stage, changing the clip where needed. */
export function goToFrame({ stage, player }: ReviewContext, clipId: string, frame: number): void {
  if (stage?.clip.id === clipId) player?.seekTo(frame);
  else reviewState.getState().show({ clipId, frame });
}

function seekToColumn(context: ReviewContext, criterion: string, column: Column): void {
  const { data, stage } = context;
  const entry = data === null ? undefined : entryOfClip(data.review, column.clipId);
  const clip = entry === undefined ? undefined : clipOf(entry, column.clipId);
  const rep = clip?.reps.find((known) => known.index === column.rep);
  if (rep === undefined) {
    if (stage?.clip.id !== column.clipId) reviewState.getState().show({ clipId: column.clipId, frame: 0 });
    return;
  }
  const moment = judgedAtStretchedEnd(criterion) ? (rep.stretchedEnd ?? rep.start) : rep.start;
  const table = tablesState.getState().tables[column.clipId]?.table;
  if (table !== undefined) goToFrame(context, column.clipId, frameOfMoment(moment, table));
  else if ('frame' in moment) goToFrame(context, column.clipId, moment.frame);
}

/** Whether the picture, or what a seek under way is heading for, is within a column: its rep, or its clip. */
function isShown({ stage, player }: ReviewContext, { clipId, rep }: Column): boolean {
  if (stage === null || stage.clip.id !== clipId || stage.tables === null || player === null) return false;
  if (rep === 'set') return true;
  const frames = repFrames(stage.clip.reps, rep, stage.tables.table);
  const frame = player.frame();
  return frames !== null && frame >= frames.first && frame <= frames.last;
}

/** Goes to a cell. The picture moves only where it shows another rep. */
export function goToCell(context: ReviewContext, criterion: string, column: Column): void {
  context.cursor.moveTo(criterion, column);
  if (!isShown(context, column)) seekToColumn(context, criterion, column);
}

/**
 * Moves the cursor. The picture goes along where it shows another rep than the new one: to that rep's start, or to its stretched
 * end where that is what is judged.
 */
function moveCursor(context: ReviewContext, move: CellMove): void {
  const { stage, cursor } = context;
  if (stage === null) return;
  const criteria = stage.grade.criteria.map((scored) => scored.criterion);
  const to = moveCell(criteria, clipsOnCard(stage.entry.clips, stage.clip.id).flatMap(columnsOfClip), cursor, move);
  if (to === null) return;
  if (sameColumn(cursor.column, to.column)) cursor.moveTo(to.criterion, to.column);
  else goToCell(context, to.criterion, to.column);
}

/** The clip before or after the one on the stage, in the order of the session. */
function clipBeside({ data, stage }: ReviewContext, step: -1 | 1): string | null {
  const clips = data?.review.entries.flatMap((entry) => entry.clips) ?? [];
  const at = clips.findIndex((clip) => clip.id === stage?.clip.id);
  return clips[at + step]?.id ?? null;
}

/** Keeps the card's column on the rep that is on screen, unless the coach is judging the whole set. */
export function followPlayhead({ stage, cursor, playing }: ReviewContext): void {
  const { clipId, frame, settled } = playhead.getState();
  if (stage === null || stage.tables === null || stage.clip.id !== clipId) return;
  if (!settled && playing === 'no') return;
  const { column, followRep, namingFlagId } = cursor;
  if (namingFlagId !== null || column === null || column.rep === 'set') return;
  const rep = repAtFrame(stage.clip.reps, frame, stage.tables.table);
  if (rep === null || (column.clipId === clipId && column.rep === rep)) return;
  followRep({ clipId, rep });
}

/** Puts the cursor on the card of the clip on the stage, where it isn't already. */
export function settleCursor({ stage, cursor }: ReviewContext): void {
  if (stage === null) return;
  const { criterion, column, moveTo } = cursor;
  const criteria = stage.grade.criteria.map((scored) => scored.criterion);
  const columns = columnsOfClip(stage.clip);
  const keptCriterion = criterion !== null && criteria.includes(criterion) ? criterion : criteria[0];
  const isOfSet = clipsOfSet(stage.entry.clips, stage.clip).some(({ id }) => id === column?.clipId);
  const sameRep = isOfSet ? columns.find(({ rep }) => rep === column?.rep) : undefined;
  const keptColumn = columns.find((known) => sameColumn(known, column)) ?? sameRep ?? columns[1] ?? columns[0];
  if (keptCriterion === undefined || keptColumn === undefined) return;
  if (keptCriterion !== criterion || !sameColumn(keptColumn, column)) moveTo(keptCriterion, keptColumn);
}

/** Goes from the whole set to the first rep, once a clip has one; a picture that plays or shows a rep stays as it is. */
export function goToFirstRep(context: ReviewContext): void {
  const { stage, cursor, frame, playing } = context;
  const rep = stage?.clip.reps[0];
  if (stage === null || rep === undefined || cursor.criterion === null) return;
  const { criterion, column, moveTo } = cursor;
  if (column?.clipId !== stage.clip.id || column.rep !== 'set') return;
  const to: Column = { clipId: stage.clip.id, rep: rep.index };
  moveTo(criterion, to);
  const table = stage.tables?.table;
  if (playing === 'no' && table !== undefined && repAtFrame(stage.clip.reps, frame, table) === null)
    seekToColumn(context, criterion, to);
}

type Moving = Command<ReviewContext>;

const cellMove = (id: CommandId, move: CellMove, key: string): Moving => ({
  ...named(id),
  group: 'scorecard',
  keys: [key],
  readOnly: 'allowed',
  when: isOnStage,
  run: (context) => moveCursor(context, move),
});

const clipMove = (id: CommandId, step: -1 | 1, key: string, atTheEnd: ReasonId): Moving => ({
  ...named(id),
  group: 'picture',
  keys: [key],
  readOnly: 'allowed',
  when: (context) =>
    allOf(isOnStage(context), clipBeside(context, step) === null ? unavailable(sayReasons(atTheEnd)) : available),
  run: (context) => {
    const clipId = clipBeside(context, step);
    if (clipId !== null) reviewState.getState().show({ clipId, frame: 0 });
  },
});

export const cellLeft = cellMove('cellLeft', 'left', 'ArrowLeft');
export const cellRight = cellMove('cellRight', 'right', 'ArrowRight');
export const cellUp = cellMove('cellUp', 'up', 'ArrowUp');
export const cellDown = cellMove('cellDown', 'down', 'ArrowDown');

/** Moving over the scorecard. */
export const cellCommands: readonly Moving[] = [
  cellLeft,
  cellRight,
  cellUp,
  cellDown,
  cellMove('cellFirst', 'first', 'Home'),
  cellMove('cellLast', 'last', 'End'),
];

/** Moving from clip to clip. */
export const clipCommands: readonly Moving[] = [
  clipMove('previousClip', -1, 'Shift+PageUp', 'firstClip'),
  clipMove('nextClip', 1, 'Shift+PageDown', 'lastClip'),
];
