import type { Changes } from '../store/changes.ts';
import { listFlags } from '../store/flags.ts';

/** Removes a clip with everything that was judged on it, within one act; its footage stays for undo. */
export function deleteClip(changes: Changes, clipId: string): void {
  for (const flag of listFlags(changes.reading, clipId)) deleteFlag(changes, flag.id);
  changes.removeWhere('suggestion_answer', 'clip_id', clipId);
  changes.removeWhere('clip_set_up', 'clip_id', clipId);
  changes.removeWhere('drawing', 'clip_id', clipId);
  changes.removeWhere('cover', 'clip_id', clipId);
  changes.removeWhere('tick', 'clip_id', clipId);
  changes.removeWhere('rep', 'clip_id', clipId);
  changes.remove('clip', { id: clipId });
}

/** Removes a flag from its reps and from the clip, within one act; a suggestion that became it comes back. */
export function deleteFlag(changes: Changes, flagId: string): void {
  changes.removeWhere('suggestion_answer', 'flag_id', flagId);
  changes.removeWhere('flag_rep', 'flag_id', flagId);
  changes.remove('flag', { id: flagId });
}
