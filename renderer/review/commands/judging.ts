import { clipOf } from '../../../engine/review/parts.ts';
import type { Entry, Flag } from '../../../engine/review/review.ts';
import type { Weight } from '../../../engine/rubric/rubric.ts';
import { mutate } from '../../bridge/mutate.ts';
import { type Availability, allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { canPlay } from '../../player/playingCommands.ts';
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
  allOf(
    isOnStage(context),
    cursorCell(context) === null ? unavailable('Choose a cell of the scorecard first.') : available,
  );

/** The reps that a mark is put on: the cursor's, with those chosen beside it. */
function repsToMark({ cursor: { column, chosenReps } }: ReviewContext): 'set' | number[] {
  if (column === null || column.rep === 'set') return 'set';
  return [...new Set([...chosenReps, column.rep])].sort((a, b) => a - b);
}

/** Flags the cell at the frame on screen, then asks which fault it is; praise has none. */
async function markCell(context: ReviewContext, weight: Weight): Promise<void> {
  const { stage, player, cursor, typing } = context;
  const cell = cursorCell(context);
  if (stage === null || cell === null || player === null) return;
  player.pause();
  if (weight !== 'keep') typing.hold();
  const added = await mutate('flags.add', {
    clipId: stage.clip.id,
    criterion: cell.criterion,
    weight,
    reps: repsToMark(context),
    frame: player.frame(),
  });
  cursor.chooseReps([]);
  if (added === null) {
    typing.release();
    return;
  }
  cursor.chooseFlag(added.flagId);
  if (weight !== 'keep') cursor.nameFault(added.flagId);
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

const notOnStageYet = unavailable('The clip is not on the stage yet; nothing was flagged. Try again when it appears.');

/** Whether the cell is of the clip that is on the stage, so that a flag gets the frame on screen. */
function canMark(context: ReviewContext): Availability {
  const { stage, cursor } = context;
  const shown = stage?.clip.id === cursor.column?.clipId && canPlay(context).can;
  return allOf(isInCell(context), shown ? available : notOnStageYet);
}

type Judging = Command<ReviewContext>;
const shared = { group: 'Scorecard', readOnly: 'refused' } as const;

const markWith = (weight: Weight, button: string, key: string, label: string): Judging => ({
  ...shared,
  id: weight,
  label,
  keys: [key],
  button,
  when: canMark,
  run: (context) => markCell(context, weight),
});

export const fine: Judging = {
  ...shared,
  id: 'fine',
  label: 'Fine: looked at, nothing to say',
  keys: ['F'],
  button: 'Fine',
  when: isInCell,
  run: toggleFine,
};

/** The weights of a flag, lightest first. */
export const weightCommands = {
  keep: markWith('keep', 'Keep', 'K', 'Keep: praise at this frame'),
  prefer: markWith('prefer', 'Prefer', '1', 'Prefer: one stroke'),
  adjust: markWith('adjust', 'Adjust', '2', 'Adjust: two strokes'),
  correct: markWith('correct', 'Correct', '3', 'Correct: three strokes'),
  stop: markWith('stop', 'Stop', '4', 'Stop: four strokes, crossed'),
} as const satisfies Readonly<Record<Weight, Judging>>;

/** Judging the cell that the cursor is in. */
export const judgingCommands: readonly Judging[] = [fine, ...Object.values(weightCommands)];
