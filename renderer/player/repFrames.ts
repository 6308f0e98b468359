import type { Rep } from '../../engine/review/review.ts';
import { frameOfMoment, frameStartUs, nearestFrame } from '../../engine/time/frames.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';

/** First and last frame of a rep; a rep without an end runs until the next one starts, or the clip ends. */
export function repFrames(
  reps: readonly Rep[],
  index: number,
  table: FrameTable,
): { readonly first: number; readonly last: number } | null {
  const rep = reps.find((known) => known.index === index);
  if (rep === undefined) return null;
  const first = frameOfMoment(rep.start, table);
  if (rep.end !== undefined) return { first, last: frameOfMoment(rep.end, table) };
  const laterStarts = reps.map((known) => frameOfMoment(known.start, table)).filter((start) => start > first);
  return { first, last: laterStarts.length > 0 ? Math.min(...laterStarts) - 1 : table.ticks.length - 1 };
}

/** The rep that holds a frame; null before, between and after reps. */
export function repAtFrame(reps: readonly Rep[], frame: number, table: FrameTable): number | null {
  let found: { readonly index: number; readonly first: number } | null = null;
  for (const rep of reps) {
    const frames = repFrames(reps, rep.index, table);
    if (frames === null || frame < frames.first || frame > frames.last) continue;
    if (found === null || frames.first > found.first) found = { index: rep.index, first: frames.first };
  }
  return found?.index ?? null;
}

/** A rep of a clip with the times it is laid out by. */
type TimedRep = { readonly reps: readonly Rep[]; readonly index: number; readonly table: FrameTable };

/** Start, stretched end where it is marked, and end of a rep, in media microseconds. */
function anchorsUs({ reps, index, table }: TimedRep, withStretchedEnd: boolean): readonly number[] | null {
  const frames = repFrames(reps, index, table);
  const stretchedEnd = reps.find((rep) => rep.index === index)?.stretchedEnd;
  if (frames === null) return null;
  const middle = withStretchedEnd && stretchedEnd !== undefined ? [frameOfMoment(stretchedEnd, table)] : [];
  return [frames.first, ...middle, frames.last].map((frame) => frameStartUs(table, frame));
}

const hasStretchedEnd = ({ reps, index }: TimedRep): boolean =>
  reps.find((rep) => rep.index === index)?.stretchedEnd !== undefined;

/**
 * The frame of another rep at the same phase: as far between start and stretched end, or between stretched end and end, as the
 * frame is in its own rep. Where one of them has no stretched end marked, as far through the whole rep. The frame that begins
 * nearest to it: times are rounded, and the last frame not after it would be one early where it begins right there. null where a rep
 * has no frames.
 */
export function samePhase(frame: number, from: TimedRep, to: TimedRep): number | null {
  const both = hasStretchedEnd(from) && hasStretchedEnd(to);
  const own = anchorsUs(from, both);
  const other = anchorsUs(to, both);
  if (own === null || other === null) return null;
  const us = frameStartUs(from.table, frame);
  const upTo = own.findIndex((anchor, place) => place > 0 && us <= anchor);
  const part = upTo === -1 ? own.length - 1 : upTo;
  const [a = 0, b = 0] = [own[part - 1], own[part]];
  const [c = 0, d = 0] = [other[part - 1], other[part]];
  const share = b === a ? 0 : Math.min(1, Math.max(0, (us - a) / (b - a)));
  return nearestFrame(to.table, Math.round(c + share * (d - c)));
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
