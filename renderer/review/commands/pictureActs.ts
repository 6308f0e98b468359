import { statusState } from '../../bridge/statusState.ts';
import type { Loop } from '../../player/player.ts';
import { stepSpeed } from '../../player/speeds.ts';
import { repAtFrame, repFrames } from '../model/repAtFrame.ts';
import { cursorState } from '../state/cursorState.ts';
import { playerState } from '../state/playerState.ts';
import { currentPlayer } from './activePlayer.ts';
import { type Here, here } from './here.ts';

export const togglePlay = (): void => currentPlayer()?.toggle();

/** Plays backwards; pauses where it already does. */
export function toggleBackwards(): void {
  const player = currentPlayer();
  if (playerState.getState().playing === 'backwards') player?.pause();
  else player?.playBackwards();
}

export const step = (frames: number, event: { readonly repeat: boolean }): void =>
  currentPlayer()?.step(frames, event.repeat ? 'held' : 'pressed');

export function setSpeed(speed: number): void {
  playerState.setState({ speed });
  currentPlayer()?.setSpeed(speed);
}

export const changeSpeed = (direction: 'slower' | 'faster'): void =>
  setSpeed(stepSpeed(playerState.getState().speed, direction));

/** Frames of the rep in hand; of the whole clip where there is none. */
function repLoop(now: Here, frame: number): Loop | null {
  if (now.tables === null) return null;
  const { table } = now.tables;
  const { column } = cursorState.getState();
  const chosen = column?.clipId === now.clip.id && column.rep !== 'set' ? column.rep : null;
  const rep = chosen ?? repAtFrame(now.clip.reps, frame, table);
  const frames = rep === null ? null : repFrames(now.clip.reps, rep, table);
  return frames ?? { first: 0, last: table.ticks.length - 1 };
}

/** Gives the player the frames of the rep in hand or of the marked range. */
export function applyLoop(): void {
  const player = currentPlayer();
  const now = here();
  if (player === null || now === null) return;
  const { loops, range } = playerState.getState();
  if (loops === 'nothing') player.setLoop(null);
  else if (loops === 'rep') player.setLoop(repLoop(now, player.frame()));
  else player.setLoop(range?.clipId === now.clip.id ? range : null);
}

export function toggleLoop(): void {
  playerState.setState(({ loops }) => ({ loops: loops === 'rep' ? 'nothing' : 'rep' }));
  applyLoop();
}

/** Marks where the range to look at begins or ends; the other edge moves along where they would cross. */
export function markRange(edge: 'first' | 'last'): void {
  const player = currentPlayer();
  const now = here();
  if (player === null || now === null || now.tables === null) return;
  const frame = player.frame();
  const { range } = playerState.getState();
  const own = range?.clipId === now.clip.id ? range : { first: 0, last: now.tables.table.ticks.length - 1 };
  const next =
    edge === 'first'
      ? { first: frame, last: Math.max(frame, own.last) }
      : { first: Math.min(frame, own.first), last: frame };
  playerState.setState({ range: { clipId: now.clip.id, ...next }, loops: 'range' });
  applyLoop();
}

/** Repeats the marked range, or stops repeating it. */
export function toggleRange(): void {
  const { loops, range } = playerState.getState();
  if (loops !== 'range' && range === null) {
    statusState.getState().tell('No range is marked yet: mark where it begins and where it ends, then repeat it.');
    return;
  }
  playerState.setState({ loops: loops === 'range' ? 'nothing' : 'range' });
  applyLoop();
}

export const showGhost = (ghost: 'shown' | 'hidden'): void => playerState.setState({ ghost });
