import { useMemo } from 'react';
import type { KeptCover } from '../../../electron/contract/covers.ts';
import type { ClipCover, Cover } from '../../../engine/covers/cover.ts';
import { headCover } from '../../../engine/covers/headCover.ts';
import { framesShown } from '../../../engine/framing/section.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { clipClock } from '../../player/clipClock.ts';
import { measuresState } from '../../state/clipState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayCovers } from '../../words/sayCovers.ts';

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

/** What a cover is called in the list and to people who can't see it: "Cover 2: mosaic". */
export const coverName = ({ kind, look }: ClipCover, index: number): string =>
  sayCovers(kind, { number: index + 1, look });

/** How many places it has and when it covers: "2 places, from 0:01.200 until 0:04.000". */
export function coverSpan(cover: ClipCover, clip: Pick<Clip, 'section'>, table: FrameTable): string {
  const timeOf = (frame: number): string => clipClock(clip, table, frame);
  const shown = framesShown(clip.section, table);
  const where = cover.kind === 'head' ? sayCovers('byJoints') : sayCovers('placed', { count: cover.places.length });
  const from = cover.firstFrame > shown.firstFrame ? timeOf(cover.firstFrame) : null;
  const until = cover.lastFrame < shown.lastFrame ? timeOf(cover.lastFrame) : null;
  if (from === null && until === null) return sayCovers('wholeSpan', { where });
  if (until === null) return sayCovers('fromSpan', { where, from: from ?? '' });
  return from === null ? sayCovers('untilSpan', { where, until }) : sayCovers('span', { where, from, until });
}
