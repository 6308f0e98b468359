import type { Rep } from '../../engine/review/review.ts';
import { frameAtUs, frameStartUs } from '../../engine/time/frames.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';
import { frameOfMoment, repAtFrame, repFrames } from './repAtFrame.ts';

/** A rep of a clip with the times it is laid out by. */
export type TimedRep = { readonly reps: readonly Rep[]; readonly index: number; readonly table: FrameTable };

/** Start, long end where it is marked, and end of a rep, in media microseconds. */
function anchorsUs({ reps, index, table }: TimedRep, withLongEnd: boolean): readonly number[] | null {
  const frames = repFrames(reps, index, table);
  const longEnd = reps.find((rep) => rep.index === index)?.longEnd;
  if (frames === null) return null;
  const middle = withLongEnd && longEnd !== undefined ? [frameOfMoment(longEnd, table)] : [];
  return [frames.first, ...middle, frames.last].map((frame) => frameStartUs(table, frame));
}

const hasLongEnd = ({ reps, index }: TimedRep): boolean =>
  reps.find((rep) => rep.index === index)?.longEnd !== undefined;

/**
 * The frame of another rep at the same phase: as far between start and long end, or between long end and end, as the
 * frame is in its own rep. Where one of them has no long end marked, as far through the whole rep. null where a rep has no
 * frames.
 */
export function samePhase(frame: number, from: TimedRep, to: TimedRep): number | null {
  const both = hasLongEnd(from) && hasLongEnd(to);
  const own = anchorsUs(from, both);
  const other = anchorsUs(to, both);
  if (own === null || other === null) return null;
  const us = frameStartUs(from.table, frame);
  const upTo = own.findIndex((anchor, place) => place > 0 && us <= anchor);
  const part = upTo === -1 ? own.length - 1 : upTo;
  const [a = 0, b = 0] = [own[part - 1], own[part]];
  const [c = 0, d = 0] = [other[part - 1], other[part]];
  const share = b === a ? 0 : Math.min(1, Math.max(0, (us - a) / (b - a)));
  return frameAtUs(to.table, Math.round(c + share * (d - c)));
}

/** The frame of the rep before at the phase of a frame; null in the first rep and outside of reps. */
export function ghostFrame(reps: readonly Rep[], frame: number, table: FrameTable): number | null {
  const own = repAtFrame(reps, frame, table);
  if (own === null) return null;
  const inOrder = [...reps].sort((a, b) => frameOfMoment(a.start, table) - frameOfMoment(b.start, table));
  const before = inOrder[inOrder.findIndex((rep) => rep.index === own) - 1];
  return before === undefined
    ? null
    : samePhase(frame, { reps, index: own, table }, { reps, index: before.index, table });
}
