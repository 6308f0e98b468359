import type { ClipCover, Cover } from '../../../../engine/covers/cover.ts';
import { headCover } from '../../../../engine/covers/headCover.ts';
import type { JointRecording } from '../../../../engine/recording/recording.ts';
import { sayProblem } from '../../../../engine/wording/sayProblem.ts';
import type { ClipOptions, Covering, Undelivered } from '../../../contract/handover.ts';
import { ProblemError } from '../../../contract/reply.ts';
import { problemOf } from '../../context/problems.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import type { Narration } from '../render/clips/narratedFilm.ts';
import { repsToLoop } from '../render/clips/repLoop.ts';
import type { HandoverWork, OpenedClip } from '../source/handoverSource.ts';
import {
  type ClipToWrite,
  makeAnnotated,
  makeLoop,
  makeNarrated,
  makePlain,
  makeStills,
  type WrittenClip,
} from './clipParts.ts';

/** Which files of a clip are wanted. */
export type WantedFiles = ClipOptions & {
  readonly stills: boolean;
  readonly clips: boolean;
  /** The clip by itself: the original, or a copy with its covers. */
  readonly originals: boolean;
};

/**
 * Writes stills, the annotated clip, loops and the clip itself into a folder. What fails is named in the result,
 * and the rest is written. Throws `cancelled` alone, and `conflict` when something is to be covered and can't be.
 */
export async function writeClip(
  tools: MediaTools,
  folder: string,
  {
    opened,
    about,
    wanted,
  }: { readonly opened: OpenedClip; readonly about: Omit<ClipToWrite, 'opened'>; readonly wanted: WantedFiles },
  work: HandoverWork,
): Promise<WrittenClip> {
  const covers = coversOf(opened, wanted.covering, about.review.name);
  const toWrite: ClipToWrite = { ...about, opened: { ...opened, clip: { ...opened.clip, covers } } };
  const loops = repsToLoop(about.review, about.rows, opened.clip.table);
  const narratedPart = (narration: Narration) =>
    [wanted.narrated, (part: HandoverWork) => makeNarrated(tools, folder, { toWrite, narration }, part)] as const;
  const parts: readonly (readonly [boolean, (part: HandoverWork) => Promise<Partial<WrittenClip>>])[] = [
    [wanted.stills, (part) => makeStills(tools, folder, toWrite, part)],
    [wanted.clips, (part) => makeAnnotated(tools, folder, { toWrite, wanted }, part)],
    ...loops.map(
      (loop) =>
        [
          wanted.clips && wanted.loops,
          (part: HandoverWork) => makeLoop(tools, folder, { toWrite, loop }, part),
        ] as const,
    ),
    ...(opened.narration === null ? [] : [narratedPart(opened.narration)]),
    [wanted.originals, (part) => makePlain(tools, folder, { toWrite, wanted }, part)],
  ];
  const due = parts.filter(([isWanted]) => isWanted);
  const made: Partial<WrittenClip>[] = [];
  const failed: Undelivered[] = [];
  for (const [index, [, make]] of due.entries()) {
    const report: HandoverWork['report'] = (share, message) => work.report((index + share) / due.length, message);
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
    poster: made.find(({ poster }) => poster)?.poster ?? null,
    annotated: made.find(({ annotated }) => annotated)?.annotated ?? null,
    original: made.find(({ original }) => original)?.original ?? null,
    plain: made.find(({ plain }) => plain)?.plain ?? null,
    failed,
  };
}

/** Why something of a clip is not there. Throws a cancel on. */
export function undelivered(clip: string, error: unknown): Undelivered {
  const { code, message } = problemOf(error, `handing over "${clip}"`);
  if (code === 'cancelled') throw error;
  return { clip, sentence: sayProblem(message, 'en'), message };
}

/**
 * What is covered in a clip: what was covered on it for good, and what is asked for besides. Throws `conflict` when a head
 * is to be covered and can't be followed: then nothing of the clip may leave.
 */
export function coversOf(
  { clip, joints, covered }: OpenedClip,
  { head, boxes, look }: Covering,
  name: string,
): readonly Cover[] {
  const all = { firstFrame: 0, lastFrame: clip.table.ticks.length - 1, look };
  const asked: readonly ClipCover[] = [
    ...covered,
    ...boxes.map((box) => ({ kind: 'box' as const, ...all, places: [{ frame: 0, box }] })),
    ...(head ? [{ kind: 'head' as const, ...all }] : []),
  ];
  return asked.map((cover) => {
    const placed = cover.kind === 'box' ? cover : followedHead(joints, cover);
    if (placed !== null) return placed;
    throw new ProblemError('conflict', 'headNotFollowed', { clip: name });
  });
}

const followedHead = (joints: JointRecording | null, cover: ClipCover) => joints && headCover(joints, cover);
