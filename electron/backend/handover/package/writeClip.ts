import type { ClipOptions, Undelivered } from '../../../contract/handover.ts';
import { problemOf } from '../../context/problems.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import type { HandoverWork, OpenedClip } from '../source/handoverSource.ts';
import { type ClipInHand, makeAnnotated, makeLoop, makeOriginal, makeStills } from './clipParts.ts';
import { coversOf } from './covering.ts';
import { repsToLoop } from './repLoops.ts';
import type { WrittenClip } from './writtenClip.ts';

/** Which files of a clip are wanted. */
export type WantedFiles = ClipOptions & {
  readonly stills: boolean;
  readonly clips: boolean;
  readonly originals: boolean;
};

/**
 * Writes stills, the annotated clip, loops and the original of one clip into a folder. What fails is named in the result,
 * and the rest is written. Throws `cancelled` alone, and `conflict` when something is to be covered and can't be.
 */
export async function writeClip(
  tools: MediaTools,
  folder: string,
  {
    opened,
    about,
    wanted,
  }: { readonly opened: OpenedClip; readonly about: Omit<ClipInHand, 'opened'>; readonly wanted: WantedFiles },
  work: HandoverWork,
): Promise<WrittenClip> {
  const covers = coversOf(opened, wanted.covering, about.review.name);
  const inHand: ClipInHand = { ...about, opened: { ...opened, clip: { ...opened.clip, covers } } };
  const loops = repsToLoop(about.review, about.rows, opened.clip.table);
  const parts: readonly (readonly [boolean, (part: HandoverWork) => Promise<Partial<WrittenClip>>])[] = [
    [wanted.stills, (part) => makeStills(tools, folder, inHand, part)],
    [wanted.clips, (part) => makeAnnotated(tools, folder, { inHand, wanted }, part)],
    ...loops.map(
      (loop) =>
        [
          wanted.clips && wanted.loops,
          (part: HandoverWork) => makeLoop(tools, folder, { inHand, loop }, part),
        ] as const,
    ),
    [wanted.originals, (part) => makeOriginal(tools, folder, { inHand, wanted }, part)],
  ];
  const due = parts.filter(([isWanted]) => isWanted);
  const made: Partial<WrittenClip>[] = [];
  const failed: Undelivered[] = [];
  for (const [place, [, make]] of due.entries()) {
    const report: HandoverWork['report'] = (share, message) => work.report((place + share) / due.length, message);
    try {
      made.push(await make({ signal: work.signal, report }));
    } catch (error) {
      const part = undelivered(about.review.name, error);
      if (!failed.some(({ sentence }) => sentence === part.sentence)) failed.push(part);
    }
  }
  return {
    files: made.flatMap(({ files = [] }) => files),
    stills: made.find(({ stills }) => stills !== undefined)?.stills ?? new Map(),
    annotated: made.find(({ annotated }) => annotated)?.annotated ?? null,
    original: made.find(({ original }) => original)?.original ?? null,
    failed,
  };
}

/** Why something of a clip is not there. Throws a cancel on. */
export function undelivered(clip: string, error: unknown): Undelivered {
  const { code, sentence } = problemOf(error, `handing over "${clip}"`);
  if (code === 'cancelled') throw error;
  return { clip, sentence };
}
