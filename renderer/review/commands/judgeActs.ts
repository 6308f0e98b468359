import { clipOf } from '../../../engine/review/parts.ts';
import type { Entry, Flag } from '../../../engine/review/review.ts';
import type { Weight } from '../../../engine/rubric/rubric.ts';
import { mutate } from '../../bridge/mutate.ts';
import { statusState } from '../../bridge/statusState.ts';
import { forgetDrafts } from '../../drafts/flagDrafts.ts';
import { reviewState } from '../../state/reviewState.ts';
import { type Column, remarksIn } from '../model/columns.ts';
import { frameOfMoment } from '../model/repAtFrame.ts';
import { cursorState } from '../state/cursorState.ts';
import { currentPlayer } from './activePlayer.ts';
import { here } from './here.ts';
import { goToFrame } from './moveActs.ts';
import { holdTyping, releaseTyping } from './typeAhead.ts';

type Judged = { readonly criterion: string; readonly column: Column };

function judged(): Judged | null {
  const { criterion, column } = cursorState.getState();
  return criterion === null || column === null ? null : { criterion, column };
}

/** The flags of a cell itself. */
export function flagsOfCell(entry: Entry, cell: Judged): readonly Flag[] {
  const clip = clipOf(entry, cell.column.clipId);
  return clip === undefined ? [] : remarksIn(entry.flags, cell, clip);
}

function isTicked(entry: Entry, cell: Judged): boolean {
  const clip = clipOf(entry, cell.column.clipId);
  return clip !== undefined && remarksIn(entry.ticks, cell, clip).length > 0;
}

/** The reps a mark speaks of: the cell's, with those chosen beside it. */
function repsAtHand(column: Column): 'set' | number[] {
  const { chosenReps } = cursorState.getState();
  if (column.rep === 'set') return 'set';
  return [...new Set([...chosenReps, column.rep])].sort((a, b) => a - b);
}

/** Chooses the rep the cursor is on, to be marked together with others; or lets go of it. */
export function chooseRepAtCursor(): void {
  const { column, chosenReps, chooseReps } = cursorState.getState();
  if (column === null || column.rep === 'set') return;
  const { rep } = column;
  chooseReps(chosenReps.includes(rep) ? chosenReps.filter((one) => one !== rep) : [...chosenReps, rep]);
}

/** Lets the flag at hand speak of the rep to the right too, and goes there. */
export async function copyFlagOn(): Promise<void> {
  const now = here();
  const cell = judged();
  const flag = flagAtHand();
  if (now === null || cell === null || flag === null || flag.reps === 'set' || cell.column.rep === 'set') return;
  const reps = now.clip.reps.map((rep) => rep.index);
  const next = reps[reps.indexOf(cell.column.rep) + 1];
  if (next === undefined) return;
  const wanted = [...new Set([...flag.reps, next])].sort((a, b) => a - b);
  await mutate('flags.update', { flagId: flag.id, change: { reps: wanted } });
  cursorState.getState().moveTo(cell.criterion, { clipId: cell.column.clipId, rep: next });
  cursorState.getState().chooseFlag(flag.id);
}

/** The flag that keys speak of: the chosen one, else the newest of the cell. */
function flagAtHand(): Flag | null {
  const now = here();
  const cell = judged();
  if (now === null || cell === null) return null;
  const { flagId } = cursorState.getState();
  const flags = flagsOfCell(now.entry, cell);
  return flags.find((flag) => flag.id === flagId) ?? flags.at(-1) ?? null;
}

/** Flags the cell at the frame on screen, then asks which fault it is; praise has none. */
export async function mark(weight: Weight): Promise<void> {
  const now = here();
  const cell = judged();
  const player = currentPlayer();
  if (now === null || cell === null) return;
  if (cell.column.clipId !== now.clip.id || player === null) {
    statusState.getState().tell('The clip is not on the stage yet; nothing was flagged. Try again when it shows.');
    return;
  }
  player.pause();
  if (weight !== 'keep') holdTyping();
  const added = await mutate('flags.add', {
    clipId: now.clip.id,
    criterion: cell.criterion,
    weight,
    reps: repsAtHand(cell.column),
    frame: player.frame(),
  });
  cursorState.getState().chooseReps([]);
  if (added === null) {
    releaseTyping();
    return;
  }
  cursorState.getState().chooseFlag(added.flagId);
  if (weight !== 'keep') cursorState.getState().nameFault(added.flagId);
}

/** Ticks the cell as looked at and fine, or takes the tick back. */
export async function toggleFine(): Promise<void> {
  const now = here();
  const cell = judged();
  if (now === null || cell === null) return;
  await mutate('ticks.set', {
    clipId: cell.column.clipId,
    criterion: cell.criterion,
    reps: repsAtHand(cell.column),
    fine: !isTicked(now.entry, cell),
  });
  cursorState.getState().chooseReps([]);
}

/** Takes a flag away: from this rep alone when it speaks of others too. */
export async function removeFlag(flag: Flag, from: Column | null): Promise<void> {
  forgetDrafts(flag.id);
  cursorState.getState().chooseFlag(null);
  const others = flag.reps === 'set' || from === null ? [] : flag.reps.filter((rep) => rep !== from.rep);
  if (others.length > 0) await mutate('flags.update', { flagId: flag.id, change: { reps: others } });
  else await mutate('flags.remove', { flagId: flag.id });
}

/** Takes away what the cell holds: its chosen or newest flag, else its tick. */
export async function removeAtCursor(): Promise<void> {
  const now = here();
  const cell = judged();
  if (now === null || cell === null) return;
  const flag = flagAtHand();
  if (flag !== null) return removeFlag(flag, cell.column);
  if (isTicked(now.entry, cell)) return toggleFine();
  const wholeSet: Judged = { ...cell, column: { ...cell.column, rep: 'set' } };
  if (flagsOfCell(now.entry, wholeSet).length > 0 || isTicked(now.entry, wholeSet)) {
    statusState.getState().tell('This mark is on the whole set: go to the Set column (Home) to take it away.');
  }
}

/** Opens the list of faults for the cell's flag. */
export function nameFaultAtCursor(): void {
  const flag = flagAtHand();
  if (flag !== null && flag.weight !== 'keep') cursorState.getState().nameFault(flag.id);
}

/** Shows the frame of a flag. */
export function goToFlag(flag: Flag): void {
  const now = here();
  if (now?.tables != null && now.clip.id === flag.clip) goToFrame(flag.clip, frameOfMoment(flag.at, now.tables.table));
  else if ('frame' in flag.at) goToFrame(flag.clip, flag.at.frame);
  else reviewState.getState().show({ clipId: flag.clip, frame: 0 });
}

/** Goes to a flag: its frame on the stage, its cell on the card. */
export function visitFlag(flag: Flag): void {
  const { column, moveTo, chooseFlag } = cursorState.getState();
  const rep = flag.reps === 'set' ? 'set' : (flag.reps.find((known) => known === column?.rep) ?? flag.reps[0] ?? 'set');
  moveTo(flag.criterion, { clipId: flag.clip, rep });
  chooseFlag(flag.id);
  goToFlag(flag);
}

export function goToFlagAtCursor(): void {
  const flag = flagAtHand();
  if (flag !== null) goToFlag(flag);
}

/** Puts the writing cursor in the note of the cell's flag. */
export function writeNote(): void {
  const flag = flagAtHand();
  if (flag === null) return;
  cursorState.getState().chooseFlag(flag.id);
  document.getElementById(`note-${flag.id}`)?.focus();
}
