import { cursorState } from '../../state/cursorState.ts';
import { playerState } from '../../state/playerState.ts';
import { stepSpeed } from '../player/index.ts';
import { repAtFrame, repFrames } from '../repAtFrame.ts';
import { currentPlayer } from './heldPlayer.ts';
import { here } from './here.ts';

export const togglePlay = (): void => currentPlayer()?.toggle();

export const step = (frames: number, event: { readonly repeat: boolean }): void =>
  currentPlayer()?.step(frames, event.repeat ? 'held' : 'pressed');

export function setSpeed(speed: number): void {
  playerState.setState({ speed });
  currentPlayer()?.setSpeed(speed);
}

export const changeSpeed = (direction: 'slower' | 'faster'): void =>
  setSpeed(stepSpeed(playerState.getState().speed, direction));

/** Gives the player the frames of the rep in hand, or the whole clip where there is none. */
export function applyLoop(): void {
  const player = currentPlayer();
  const now = here();
  if (player === null || now === null || now.tables === null) return;
  if (!playerState.getState().loopsRep) {
    player.setLoop(null);
    return;
  }
  const { table } = now.tables;
  const { column } = cursorState.getState();
  const chosen = column?.clipId === now.clip.id && column.rep !== 'set' ? column.rep : null;
  const rep = chosen ?? repAtFrame(now.clip.reps, player.frame(), table);
  const frames = rep === null ? null : repFrames(now.clip.reps, rep, table);
  player.setLoop(frames ?? { first: 0, last: table.ticks.length - 1 });
}

export function toggleLoop(): void {
  playerState.setState((state) => ({ loopsRep: !state.loopsRep }));
  applyLoop();
}
