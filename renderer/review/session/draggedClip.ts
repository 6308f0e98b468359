import type { Entry } from '../../../engine/review/review.ts';
import { mutate } from '../../bridge/mutate.ts';

const kind = 'application/x-rackside-clip';

/** Takes a clip along with a drag. */
export function takeAlong(transfer: DataTransfer, clipId: string): void {
  transfer.setData(kind, clipId);
  transfer.effectAllowed = 'move';
}

/** Whether a drag carries a clip of this window, and no files. */
export const carriesClip = (transfer: DataTransfer): boolean => transfer.types.includes(kind);

/** Puts the clip of a drag into an exercise, in front of a clip or behind all. */
export async function drop(transfer: DataTransfer, entry: Entry, before: string | null): Promise<void> {
  const clipId = transfer.getData(kind);
  if (clipId === '' || clipId === before) return;
  await mutate('clips.move', { clipId, to: { kind: 'entry', entryId: entry.id, before } });
}
