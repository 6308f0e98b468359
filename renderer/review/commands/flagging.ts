import type { Flag } from '../../../engine/review/review.ts';
import { mutate } from '../../bridge/mutate.ts';
import { type Availability, allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { forgetDrafts } from '../../drafts/drafts.ts';
import { frameOfMoment } from '../../player/repFrames.ts';
import type { Column } from '../../state/cursorState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayReasons } from '../../words/sayReasons.ts';
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
  allOf(isInCell(context), selectedFlag(context) === null ? unavailable(sayReasons('noFlag')) : available);

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
  return isMarked(onWholeSet(cell)) ? unavailable(sayReasons('markedOnSet')) : unavailable(sayReasons('nothingMarked'));
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
const shared = { group: 'scorecard', readOnly: 'refused' } as const;

const copyFlag: Flagging = {
  ...shared,
  ...named('copyFlag'),
  keys: ['C'],
  when: (context) =>
    allOf(
      hasFlag(context),
      selectedFlag(context)?.reps === 'set' ? unavailable(sayReasons('flagOnSet')) : available,
      isOnRep(context),
      nextRep(context) === null ? unavailable(sayReasons('lastRep')) : available,
    ),
  run: extendToNextRep,
};

function canNameFault(flag: Flag | null): Availability {
  if (flag?.severity === 'keep') return unavailable(sayReasons('praise'));
  return flag?.severity === null ? unavailable(sayReasons('plainNote')) : available;
}

const nameFault: Flagging = {
  ...shared,
  ...named('nameFault'),
  keys: ['Enter'],
  when: (context) => allOf(hasFlag(context), canNameFault(selectedFlag(context))),
  run: (context) => context.cursor.nameFault(selectedFlag(context)?.id ?? null),
};

const note: Flagging = {
  ...shared,
  ...named('note'),
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
  ...named('goToFlag'),
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
  ...named('remove'),
  keys: ['Delete', 'Backspace'],
  when: canRemove,
  run: (context) => {
    const flag = selectedFlag(context);
    return flag === null ? toggleFine(context) : removeFlag(context, flag, context.cursor.column);
  },
};

/** What can be done with the selected flag. */
export const flaggingCommands: readonly Flagging[] = [copyFlag, nameFault, note, goToFlagOfCell, remove];
