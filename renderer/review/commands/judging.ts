import { clipOf } from '../../../engine/review/parts.ts';
import type { Entry, Flag } from '../../../engine/review/review.ts';
import type { Severity } from '../../../engine/rubric/rubric.ts';
import { mutate } from '../../bridge/mutate.ts';
import { type Availability, allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { canPlay } from '../../player/playingCommands.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { type CursorCell, remarksIn } from '../model/columns.ts';
import { isOnStage, type ReviewContext } from './reviewContext.ts';

/** The cell that the cursor is in. */
export const cursorCell = ({ cursor: { criterion, column } }: ReviewContext): CursorCell | null =>
  criterion === null || column === null ? null : { criterion, column };

/** The flags of a cell itself. */
export function flagsOfCell(entry: Entry, cell: CursorCell): readonly Flag[] {
  const clip = clipOf(entry, cell.column.clipId);
  return clip === undefined ? [] : remarksIn(entry.flags, cell, clip);
}

export function isTicked(entry: Entry, cell: CursorCell): boolean {
  const clip = clipOf(entry, cell.column.clipId);
  return clip !== undefined && remarksIn(entry.ticks, cell, clip).length > 0;
}

/** Whether the cursor is in a cell. */
export const isInCell = (context: ReviewContext): Availability =>
  allOf(isOnStage(context), cursorCell(context) === null ? unavailable(sayReasons('noCell')) : available);

/** The reps that a mark is put on: the cursor's, with those chosen beside it. */
function repsToMark({ cursor: { column, chosenReps } }: ReviewContext): 'set' | number[] {
  if (column === null || column.rep === 'set') return 'set';
  return [...new Set([...chosenReps, column.rep])].sort((a, b) => a - b);
}

/** Flags the cell at the frame on screen, then asks which fault it is; praise has none. */
async function markCell(context: ReviewContext, severity: Severity): Promise<void> {
  const { stage, player, cursor, typing } = context;
  const cell = cursorCell(context);
  if (stage === null || cell === null || player === null) return;
  player.pause();
  if (severity !== 'keep') typing.hold();
  const added = await mutate('flags.add', {
    clipId: stage.clip.id,
    criterion: cell.criterion,
    severity,
    reps: repsToMark(context),
    frame: player.frame(),
  });
  cursor.chooseReps([]);
  if (added === null) {
    typing.release();
    return;
  }
  cursor.chooseFlag(added.flagId);
  if (severity !== 'keep') cursor.nameFault(added.flagId);
}

/** Ticks the cell as looked at and fine, or takes the tick back. */
export async function toggleFine(context: ReviewContext): Promise<void> {
  const { stage, cursor } = context;
  const cell = cursorCell(context);
  if (stage === null || cell === null) return;
  await mutate('ticks.set', {
    clipId: cell.column.clipId,
    criterion: cell.criterion,
    reps: repsToMark(context),
    fine: !isTicked(stage.entry, cell),
  });
  cursor.chooseReps([]);
}

/** Whether the cell is of the clip that is on the stage, so that a flag gets the frame on screen. */
function canMark(context: ReviewContext): Availability {
  const { stage, cursor } = context;
  const shown = stage?.clip.id === cursor.column?.clipId && canPlay(context).can;
  return allOf(isInCell(context), shown ? available : unavailable(sayReasons('notOnStage')));
}

type Judging = Command<ReviewContext>;
const shared = { group: 'scorecard', readOnly: 'refused' } as const;

const markWith = (severity: Severity, key: string): Judging => ({
  ...shared,
  ...named(severity),
  keys: [key],
  when: canMark,
  run: (context) => markCell(context, severity),
});

export const fine: Judging = {
  ...shared,
  ...named('fine'),
  keys: ['F'],
  when: isInCell,
  run: toggleFine,
};

/** The severities of a flag, lightest first. */
export const severityCommands = {
  keep: markWith('keep', 'K'),
  prefer: markWith('prefer', '1'),
  adjust: markWith('adjust', '2'),
  correct: markWith('correct', '3'),
  stop: markWith('stop', '4'),
} as const satisfies Readonly<Record<Severity, Judging>>;

/** Judging the cell that the cursor is in. */
export const judgingCommands: readonly Judging[] = [fine, ...Object.values(severityCommands)];
