import { mutate } from '../../bridge/mutate.ts';
import { reviewState } from '../../state/reviewState.ts';
import { cursorState } from '../state/cursorState.ts';
import { currentPlayer } from './activePlayer.ts';
import { here } from './here.ts';

/** Marks an edge of a rep at the frame on screen; playing goes on. */
export async function markEdge(edge: 'start' | 'longEnd' | 'end'): Promise<void> {
  const now = here();
  const player = currentPlayer();
  if (now === null || player === null) return;
  const marked = await mutate('reps.mark', { clipId: now.clip.id, edge, frame: player.frame() });
  if (marked === null) return;
  // The column of a new rep exists only once the review has been read again.
  await reviewState.getState().refresh();
  const { criterion, column, moveTo } = cursorState.getState();
  if (criterion !== null && edge === 'start' && column?.clipId === now.clip.id) {
    moveTo(criterion, { clipId: now.clip.id, rep: marked.rep });
  }
}

/** Takes away the rep of the column the cursor is in. */
export async function removeRepAtCursor(): Promise<void> {
  const { column } = cursorState.getState();
  if (column === null || column.rep === 'set') return;
  await mutate('reps.remove', { clipId: column.clipId, rep: column.rep });
}
