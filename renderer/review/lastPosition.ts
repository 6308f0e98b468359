import { later } from '../base/later.ts';
import { rackside } from '../bridge/rackside.ts';
import { reviewState } from '../state/reviewState.ts';
import { playhead } from './state/playerState.ts';

let callOff: (() => void) | null = null;
let sent = '';

/** Tells the backend where the coach is. It is no act: it never shows as saving, and nothing is lost where it fails. */
export function saveLastPosition(): void {
  callOff?.();
  callOff = null;
  const { sessionId, clipId } = reviewState.getState();
  const now = playhead.getState();
  if (sessionId === null || clipId === null || now.clipId !== clipId || !now.settled) return;
  const position = `${sessionId}/${clipId}/${now.frame}`;
  if (position === sent) return;
  sent = position;
  void rackside().ask('place.set', { sessionId, clipId, frame: now.frame });
}

/** Saves the position once the coach has stayed there a moment. */
export function rememberPosition(): void {
  callOff?.();
  callOff = later(600, saveLastPosition);
}
