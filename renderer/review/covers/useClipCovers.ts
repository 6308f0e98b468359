import { useMemo } from 'react';
import type { KeptCover } from '../../../electron/contract/covers.ts';
import type { Cover } from '../../../engine/covers/cover.ts';
import { headCover } from '../../../engine/covers/headCover.ts';
import { measuresState } from '../../state/measuresState.ts';
import { reviewState } from '../../state/reviewState.ts';

/** A cover with where it is at each frame; `placed` null = the head it follows is nowhere to be seen. */
export type ClipCoverShown = KeptCover & { readonly placed: Cover | null };

const none: readonly KeptCover[] = [];

/** The covers of a clip, those of the head laid where the joints have it. */
export function useClipCovers(clipId: string): readonly ClipCoverShown[] {
  const all = reviewState((state) => state.data?.covers ?? none);
  const joints = measuresState((state) => (state.clipId === clipId ? (state.recording?.joints ?? null) : null));
  return useMemo(
    () =>
      all
        .filter((kept) => kept.clipId === clipId)
        .map((kept) => {
          const { cover } = kept;
          return { ...kept, placed: cover.kind === 'box' ? cover : joints && headCover(joints, cover) };
        }),
    [all, joints, clipId],
  );
}

/** Whether the lifter's joints are known in a clip, so that something can follow them. */
export const useJointsKnown = (clipId: string): boolean =>
  measuresState((state) => state.clipId === clipId && state.recording?.joints != null);
