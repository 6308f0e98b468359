import type { Flag } from '../../../engine/review/review.ts';
import { mutate } from '../../bridge/mutate.ts';
import { type Availability, allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { forgetDrafts } from '../../drafts/drafts.ts';
import { frameOfMoment } from '../../player/repFrames.ts';
import type { Column } from '../../state/cursorState.ts';
import { reviewState } from '../../state/reviewState.ts';
import type { CursorCell } from '../model/columns.ts';
import { cursorCell, flagsOfCell, isInCell, isTicked, toggleFine } from './judging.ts';
import { goToFrame } from './moving.ts';
import { isOnRep, type ReviewContext } from './reviewContext.ts';

/** The selected flag: the one that was chosen, else the newest of the cell. */
function selectedFlag(context: ReviewContext): Flag | null {
  const { stage, cursor } = context;
  const cell = cursorCell(context);
  if (stage === null || cell === null) return null;
  const flags = flagsOfCell(stage.entry, cell);
  return flags.find((flag) => flag.id === cursor.flagId) ?? flags.at(-1) ?? null;
}

const hasFlag = (context: ReviewContext): Availability =>
  allOf(isInCell(context), selectedFlag(context) === null ? unavailable('This cell has no flag.') : available);

/** The rep after the cursor's, on the same clip. */
function nextRep({ stage, cursor: { column } }: ReviewContext): number | null {
  if (stage === null || column === null || column.rep === 'set') return null;
  const reps = stage.clip.reps.map((rep) => rep.index);
  return reps[reps.indexOf(column.rep) + 1] ?? null;
}

async function extendToNextRep(context: ReviewContext): Promise<void> {
  const flag = selectedFlag(context);
  const cell = cursorCell(context);
  const next = nextRep(context);
  if (flag === null || flag.reps === 'set' || cell === null || next === null) return;
  const reps = [...new Set([...flag.reps, next])].sort((a, b) => a - b);
  await mutate('flags.update', { flagId: flag.id, change: { reps } });
  context.cursor.moveTo(cell.criterion, { clipId: cell.column.clipId, rep: next });
  context.cursor.chooseFlag(flag.id);
}

/** Takes a flag away: from this rep alone when it is on others too. */
export async function removeFlag({ cursor }: ReviewContext, flag: Flag, from: Column | null): Promise<void> {
  forgetDrafts(flag.id);
  cursor.chooseFlag(null);
  const others = flag.reps === 'set' || from === null ? [] : flag.reps.filter((rep) => rep !== from.rep);
  if (others.length > 0) await mutate('flags.update', { flagId: flag.id, change: { reps: others } });
  else await mutate('flags.remove', { flagId: flag.id });
}

const onWholeSet = ({ criterion, column }: CursorCell): CursorCell => ({
  criterion,
  column: { ...column, rep: 'set' },
});

function canRemove(context: ReviewContext): Availability {
  const { stage } = context;
  const cell = cursorCell(context);
  if (stage === null || cell === null) return isInCell(context);
  const isMarked = (one: CursorCell): boolean => flagsOfCell(stage.entry, one).length > 0 || isTicked(stage.entry, one);
  if (isMarked(cell)) return available;
  return isMarked(onWholeSet(cell))
    ? unavailable('This mark is on the whole set: go to the Set column (Home) to take it away.')
    : unavailable('There is no flag and no tick in this cell.');
}

/** Shows the frame of a flag. */
function goToFlag(context: ReviewContext, flag: Flag): void {
  const { stage } = context;
  if (stage?.tables != null && stage.clip.id === flag.clip) {
    goToFrame(context, flag.clip, frameOfMoment(flag.at, stage.tables.table));
  } else if ('frame' in flag.at) goToFrame(context, flag.clip, flag.at.frame);
  else reviewState.getState().show({ clipId: flag.clip, frame: 0 });
}

/** Goes to a flag: its frame on the stage, its cell on the card. */
export function visitFlag(context: ReviewContext, flag: Flag): void {
  const { column, moveTo, chooseFlag } = context.cursor;
  const rep = flag.reps === 'set' ? 'set' : (flag.reps.find((known) => known === column?.rep) ?? flag.reps[0] ?? 'set');
  moveTo(flag.criterion, { clipId: flag.clip, rep });
  chooseFlag(flag.id);
  goToFlag(context, flag);
}

type Flagging = Command<ReviewContext>;
const shared = { group: 'Scorecard', readOnly: 'refused' } as const;

const copyFlag: Flagging = {
  ...shared,
  id: 'copyFlag',
  label: 'The same flag on the next rep',
  keys: ['C'],
  when: (context) =>
    allOf(
      hasFlag(context),
      selectedFlag(context)?.reps === 'set' ? unavailable('This flag is on the whole set already.') : available,
      isOnRep(context),
      nextRep(context) === null ? unavailable('This is the last rep of the clip.') : available,
    ),
  run: extendToNextRep,
};

const nameFault: Flagging = {
  ...shared,
  id: 'nameFault',
  label: 'Name the fault of this cell',
  keys: ['Enter'],
  when: (context) =>
    allOf(
      hasFlag(context),
      selectedFlag(context)?.weight === 'keep' ? unavailable('Praise has no fault to name.') : available,
    ),
  run: (context) => context.cursor.nameFault(selectedFlag(context)?.id ?? null),
};

const note: Flagging = {
  ...shared,
  id: 'note',
  label: 'Write a note for this cell',
  keys: ['N'],
  when: hasFlag,
  run: (context) => {
    const flag = selectedFlag(context);
    if (flag === null) return;
    context.cursor.chooseFlag(flag.id);
    context.focus.onNote(flag.id);
  },
};

const goToFlagOfCell: Flagging = {
  ...shared,
  id: 'goToFlag',
  label: 'Go to the frame of this cell',
  keys: ['G'],
  readOnly: 'allowed',
  when: hasFlag,
  run: (context) => {
    const flag = selectedFlag(context);
    if (flag !== null) goToFlag(context, flag);
  },
};

const remove: Flagging = {
  ...shared,
  id: 'remove',
  label: 'Take away the flag or the tick',
  keys: ['Delete', 'Backspace'],
  when: canRemove,
  run: (context) => {
    const flag = selectedFlag(context);
    return flag === null ? toggleFine(context) : removeFlag(context, flag, context.cursor.column);
  },
};

/** What can be done with the selected flag. */
export const flaggingCommands: readonly Flagging[] = [copyFlag, nameFault, note, goToFlagOfCell, remove];
