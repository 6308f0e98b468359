import { useMemo } from 'react';
import type { KeptCover } from '../../../electron/contract/covers.ts';
import type { ClipCover, Cover, CoverLook } from '../../../engine/covers/cover.ts';
import { headCover } from '../../../engine/covers/headCover.ts';
import { frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { formatClock } from '../../../engine/time/writtenTime.ts';
import { measuresState } from '../../state/clipState.ts';
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

export const lookNames: Readonly<Record<CoverLook, string>> = { filled: 'Dark box', mosaic: 'Mosaic' };

/** What a cover is called in the list and to people who can't see it: "Cover 2: mosaic". */
export function coverName({ kind, look }: ClipCover, index: number): string {
  const what = kind === 'head' ? 'the lifter’s head, ' : '';
  return `Cover ${index + 1}: ${what}${lookNames[look].toLowerCase()}`;
}

/** How many places it has and when it covers: "2 places, from 0:01.200 until 0:04.000". */
export function coverSpan(cover: ClipCover, table: FrameTable): string {
  const clock = (frame: number) => formatClock(frameStartUs(table, frame));
  const places = cover.kind === 'head' ? 'by the joints' : counted(cover.places.length);
  const begins = cover.firstFrame > 0 ? `from ${clock(cover.firstFrame)}` : '';
  const ends = cover.lastFrame < table.ticks.length - 1 ? `until ${clock(cover.lastFrame)}` : '';
  const when = [begins, ends].filter((part) => part !== '').join(' ');
  return `${places}, ${when === '' ? 'whole clip' : when}`;
}

const counted = (places: number): string => (places === 1 ? '1 place' : `${places} places`);
