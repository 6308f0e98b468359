import type { ClipCover, Cover } from '../../../../engine/covers/cover.ts';
import { headCover } from '../../../../engine/covers/headCover.ts';
import type { JointRecording } from '../../../../engine/recording/recording.ts';
import type { Covering } from '../../../contract/handover.ts';
import { ProblemError } from '../../../contract/reply.ts';
import type { OpenedClip } from '../source/handoverSource.ts';

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
    throw new ProblemError(
      'conflict',
      `The head in "${name}" could not be followed, so nothing of this clip was handed over; measure it with its joints, or cover a place.`,
    );
  });
}

const followedHead = (joints: JointRecording | null, cover: ClipCover) => joints && headCover(joints, cover);
