import { screenState } from '../../state/screenState.ts';
import { repAtFrame } from '../model/repAtFrame.ts';
import { currentPlayer } from './activePlayer.ts';
import { here } from './here.ts';

/** Lays the clip on the stage beside another, at the rep on screen. */
export function compareClip(): void {
  const now = here();
  if (now === null || now.tables === null) return;
  const rep = repAtFrame(now.clip.reps, currentPlayer()?.frame() ?? 0, now.tables.table);
  screenState.getState().go({ kind: 'compare', sessionId: now.sessionId, clipId: now.clip.id, rep });
}
