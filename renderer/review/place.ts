import { later } from '../base/later.ts';
import { rackside } from '../bridge/rackside.ts';
import { reviewState } from '../state/reviewState.ts';
import { playhead } from './state/playerState.ts';

let callOff: (() => void) | null = null;
let sent = '';

/** Tells the backend where the coach is. A view change: it never shows as saving, and its failure harms nothing. */
export function savePlace(): void {
  callOff?.();
  callOff = null;
  const { sessionId, clipId } = reviewState.getState();
  const now = playhead.getState();
  if (sessionId === null || clipId === null || now.clipId !== clipId || !now.settled) return;
  const place = `${sessionId}/${clipId}/${now.frame}`;
  if (place === sent) return;
  sent = place;
  void rackside().ask('place.set', { sessionId, clipId, frame: now.frame });
}

/** The same, once the coach has stayed there a moment. */
export function rememberPlace(): void {
  callOff?.();
  callOff = later(600, savePlace);
}
