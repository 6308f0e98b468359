import { entryOfClip } from '../../../engine/review/parts.ts';
import type { Flag } from '../../../engine/review/review.ts';
import { frameOfMoment } from '../../../engine/time/frames.ts';
import { mutate } from '../../bridge/mutate.ts';
import { statusState } from '../../bridge/statusState.ts';
import { type Availability, allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { forgetDrafts } from '../../drafts/drafts.ts';
import type { Column } from '../../state/cursorState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayFlags } from '../../words/sayFlags.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { type CursorCell, sameColumn } from '../model/columns.ts';
import { flagWords, frameWords } from '../model/flagWords.ts';
import { copyState } from '../state/panelState.ts';
import { canMark, cursorCell, flagsOfCell, isInCell, isTicked, markCell, toggleFine } from './judging.ts';
import { goToCell, goToFrame } from './moving.ts';
import { openNote } from './noteField.ts';
import { frameOnScreen } from './onScreen.ts';
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

/**
 * Goes to a clicked cell: to the moment of its first flag, and with the next click to that of the next one. Without flags the
 * picture moves only where it shows another rep.
 */
export function visitCell(context: ReviewContext, criterion: string, column: Column): void {
  const { data, cursor } = context;
  const entry = data === null ? undefined : entryOfClip(data.review, column.clipId);
  const flags = entry === undefined ? [] : inOrder(flagsOfCell(entry, { criterion, column }));
  const isHere = cursor.criterion === criterion && sameColumn(cursor.column, column);
  const at = isHere ? flags.findIndex(({ id }) => id === cursor.flagId) : -1;
  const next = flags[(at + 1) % Math.max(1, flags.length)];
  if (next === undefined) {
    goToCell(context, criterion, column);
    return;
  }
  cursor.moveTo(criterion, column);
  cursor.chooseFlag(next.id);
  goToFlag(context, next);
}

/** Flags of one clip by their moments. */
const inOrder = (flags: readonly Flag[]): readonly Flag[] => flags.toSorted((a, b) => whenOf(a) - whenOf(b));

const whenOf = ({ at }: Flag): number => ('frame' in at ? at.frame : at.seconds);

/** Stops naming the fault of a flag that is gone, as after an undo, so that keys are the scorecard's again. */
export function settleNaming({ data, cursor, typing }: ReviewContext): void {
  const { namingFlagId } = cursor;
  if (namingFlagId === null || data === null) return;
  if (data.review.entries.some(({ flags }) => flags.some(({ id }) => id === namingFlagId))) return;
  cursor.nameFault(null);
  typing.drop();
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
  when: (context) => allOf(isInCell(context), selectedFlag(context) === null ? canMark(context) : available),
  run: (context) => {
    const flag = selectedFlag(context);
    return flag === null ? markCell(context, null) : openNote(context, flag.id);
  },
  onRefusedKey: ({ typing }) => typing.stick(),
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

/** Moves a flag to another frame of its clip. */
export async function moveFlag({ stage }: ReviewContext, flag: Flag, frame: number): Promise<void> {
  if ('frame' in flag.at && flag.at.frame === frame) return;
  if ((await mutate('flags.update', { flagId: flag.id, change: { frame } })) === null) return;
  if (stage !== null && stage.tables !== null) {
    const at = frameWords(stage.clip, stage.tables.table, frame);
    statusState.getState().say(sayFlags('landed', { flag: flagWords(flag, stage), at }));
  }
  await reviewState.getState().refresh();
}

/** Moves a flag to the frame on screen. */
export const moveFlagHere = (context: ReviewContext, flag: Flag): Promise<void> =>
  context.landing.follow(moveOnceShown(context, flag));

async function moveOnceShown(context: ReviewContext, flag: Flag): Promise<void> {
  const frame = await frameOnScreen(context);
  if (frame === null) statusState.getState().refuse(sayReasons('pictureUnsettled'));
  else await moveFlag(context, flag, frame);
}

export const flagHere: Flagging = {
  ...shared,
  ...named('flagHere'),
  keys: ['Shift+G'],
  when: (context) => allOf(hasFlag(context), canMark(context)),
  run: (context) => {
    const flag = selectedFlag(context);
    return flag === null ? undefined : moveFlagHere(context, flag);
  },
};

export const copyFlagTo: Flagging = {
  ...shared,
  ...named('copyFlagTo'),
  keys: ['Mod+Shift+V'],
  when: hasFlag,
  run: (context) => {
    const flag = selectedFlag(context);
    if (flag !== null) copyState.setState({ flagId: flag.id });
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
export const flaggingCommands: readonly Flagging[] = [
  copyFlag,
  nameFault,
  note,
  goToFlagOfCell,
  flagHere,
  copyFlagTo,
  remove,
];
