import type { Covering } from '../../contract/handover.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Cover } from './covers/cover.ts';
import { headCover } from './covers/headCover.ts';
import type { OpenedClip } from './handoverSource.ts';

/**
 * What is covered in a clip. Throws `conflict` when the head is to be covered and can't be followed: then nothing of the
 * clip may leave.
 */
export function coversOf(
  { clip, joints }: OpenedClip,
  { head, boxes, look }: Covering,
  name: string,
): readonly Cover[] {
  const all = { fromFrame: 0, toFrame: clip.table.ticks.length - 1, look };
  const fixed = boxes.map((box): Cover => ({ ...all, places: [{ frame: 0, box }] }));
  if (!head) return fixed;
  const following = joints && headCover(joints, all);
  if (following) return [...fixed, following];
  throw new ProblemError(
    'conflict',
    `The head in "${name}" could not be followed, so nothing of this clip was handed over; measure it with its joints, or cover a place.`,
  );
}
