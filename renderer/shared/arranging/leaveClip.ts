import { reviewState } from '../../state/reviewState.ts';

/** Gives what puts the next clip on the stage, or the one before, once a clip has left the session under review. */
export function leaveClip(clipId: string): () => void {
  const { data, clipId: shown } = reviewState.getState();
  const clips = data?.review.entries.flatMap((entry) => entry.clips.map(({ id }) => id)) ?? [];
  const at = clips.indexOf(clipId);
  const next = clips[at + 1] ?? clips[at - 1];
  return () => {
    if (shown === clipId && next !== undefined) reviewState.getState().show({ clipId: next, frame: 0 });
  };
}
