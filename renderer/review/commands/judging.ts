import type { Entry, Flag } from '../../../engine/review/review.ts';
import type { Severity } from '../../../engine/rubric/rubric.ts';
import { mutate } from '../../bridge/mutate.ts';
import { statusState } from '../../bridge/statusState.ts';
import { type Availability, allOf, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { canPlay } from '../../player/playingCommands.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayFlags } from '../../words/sayFlags.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { type CursorCell, remarksOfSet } from '../model/columns.ts';
import { flagWords, frameWords } from '../model/flagWords.ts';
import { openNote } from './noteField.ts';
import { frameOnScreen } from './onScreen.ts';
import { isOnStage, type ReviewContext } from './reviewContext.ts';

/** The cell that the cursor is in. */
export const cursorCell = ({ cursor: { criterion, column } }: ReviewContext): CursorCell | null =>
  criterion === null || column === null ? null : { criterion, column };

/** The flags of a cell itself. */
export function flagsOfCell(entry: Entry, cell: CursorCell): readonly Flag[] {
  return remarksOfSet(entry.flags, cell, entry.clips);
}

export function isTicked(entry: Entry, cell: CursorCell): boolean {
  return remarksOfSet(entry.ticks, cell, entry.clips).length > 0;
}

/** Whether the cursor is in a cell. */
export const isInCell = (context: ReviewContext): Availability =>
  allOf(isOnStage(context), cursorCell(context) === null ? unavailable(sayReasons('noCell')) : available);

/** The reps that a mark is put on: the cursor's, with those chosen beside it. */
function repsToMark({ cursor: { column, chosenReps } }: ReviewContext): 'set' | number[] {
  if (column === null || column.rep === 'set') return 'set';
  return [...new Set([...chosenReps, column.rep])].sort((a, b) => a - b);
}

/** The plain note that a severity makes a flag of: the selected one of the cursor's cell, while no other reps are chosen. */
function noteToWeigh(context: ReviewContext, cell: CursorCell): Flag | null {
  const { stage, cursor } = context;
  if (stage === null || cursor.chosenReps.length > 0) return null;
  const flags = flagsOfCell(stage.entry, cell);
  const selected = flags.find(({ id }) => id === cursor.flagId) ?? flags.at(-1);
  return selected?.severity === null ? selected : null;
}

/** What is put in the cell. */
type Mark = Pick<Flag, 'criterion' | 'severity' | 'reps'>;

/** Adds a flag at the frame on screen and says where it landed; its id, or null where it didn't. */
async function addFlag(context: ReviewContext, clipId: string, mark: Mark): Promise<string | null> {
  const frame = await frameOnScreen(context);
  if (frame === null) {
    statusState.getState().refuse(sayReasons('pictureUnsettled'));
    return null;
  }
  const added = await mutate('flags.add', { clipId, ...mark, frame });
  if (added === null) return null;
  sayLanded(context, mark, frame);
  return added.flagId;
}

function sayLanded({ stage }: ReviewContext, mark: Mark, frame: number): void {
  if (stage === null || stage.tables === null) return;
  const at = frameWords(stage.clip, stage.tables.table, frame);
  statusState.getState().say(sayFlags('landed', { flag: flagWords(mark, stage), at }));
}

/** Gives a plain note a severity, at the moment that it has; its id, or null where that was not saved. */
async function weigh(context: ReviewContext, note: Flag, severity: Severity): Promise<string | null> {
  const changed = await mutate('flags.update', { flagId: note.id, change: { severity } });
  if (changed === null) return null;
  if ('frame' in note.at) sayLanded(context, { ...note, severity }, note.at.frame);
  return note.id;
}

/** Whether the review holds a flag, as it is in the library now: an undo may have been quicker. */
async function isThere(context: ReviewContext, flagId: string): Promise<boolean> {
  await reviewState.getState().refresh();
  const entries = context.data?.review.entries ?? [];
  return entries.some(({ flags }) => flags.some(({ id }) => id === flagId));
}

/**
 * Flags the cell at the frame on screen, or weighs the plain note in it; then asks which fault it is, or, without a severity,
 * for the note. Praise has no fault. What is typed meanwhile is kept for that field.
 */
export async function markCell(context: ReviewContext, severity: Severity | null): Promise<void> {
  const { stage, cursor, typing } = context;
  const cell = cursorCell(context);
  if (stage === null || cell === null) return;
  const asksForFault = severity !== null && severity !== 'keep' && stage.exercise !== null;
  if (asksForFault || severity === null) typing.hold();
  const mark = { criterion: cell.criterion, severity, reps: repsToMark(context) };
  const note = severity === null ? null : noteToWeigh(context, cell);
  const flagId =
    note === null || severity === null
      ? await context.landing.follow(addFlag(context, stage.clip.id, mark))
      : await weigh(context, note, severity);
  if (flagId === null) {
    if (asksForFault || severity === null) typing.stick();
    return;
  }
  cursor.chooseReps([]);
  if (!(await isThere(context, flagId))) {
    typing.drop();
    return;
  }
  cursor.chooseFlag(flagId);
  if (asksForFault) cursor.nameFault(flagId);
  else if (severity === null) openNote(context, flagId);
}

/** Ticks the cell as looked at and fine, or takes the tick back. */
export async function toggleFine(context: ReviewContext): Promise<void> {
  const { stage, cursor } = context;
  const cell = cursorCell(context);
  if (stage === null || cell === null) return;
  const { criterion } = cell;
  const ticked = remarksOfSet(stage.entry.ticks, cell, stage.entry.clips).map(({ clip }) => clip);
  const clips = ticked.length > 0 ? new Set(ticked) : [cell.column.clipId];
  for (const clipId of clips) {
    await mutate('ticks.set', { clipId, criterion, reps: repsToMark(context), fine: ticked.length === 0 });
  }
  cursor.chooseReps([]);
}

/** Whether the cell is of the clip that is on the stage, so that a flag gets the frame on screen. */
export function canMark(context: ReviewContext): Availability {
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
  ...(severity !== 'keep' && { onRefusedKey: ({ typing }: ReviewContext) => typing.stick() }),
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
