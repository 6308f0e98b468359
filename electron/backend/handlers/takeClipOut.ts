import { type Changes, listFlags } from '../store/index.ts';

/** Removes a clip with everything that was judged on it, within one act; its footage stays for undo. */
export function takeClipOut(changes: Changes, clipId: string): void {
  for (const flag of listFlags(changes.reading, clipId)) takeFlagOut(changes, flag.id);
  changes.removeWhere('drawing', 'clip_id', clipId);
  changes.removeWhere('tick', 'clip_id', clipId);
  changes.removeWhere('rep', 'clip_id', clipId);
  changes.remove('clip', { id: clipId });
}

/** Removes a flag from its reps and from the clip, within one act. */
export function takeFlagOut(changes: Changes, flagId: string): void {
  changes.removeWhere('flag_rep', 'flag_id', flagId);
  changes.remove('flag', { id: flagId });
}
