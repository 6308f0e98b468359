import { frameAtUs } from '../../time/frames.ts';
import type { FrameTable } from '../../time/frameTable.ts';
import { type Moment, ticksToUs } from '../../time/moment.ts';

type RepEdges = { readonly start: Moment; readonly end?: Moment | undefined };

const frameOf = (moment: Moment, table: FrameTable): number =>
  'frame' in moment ? moment.frame : frameAtUs(table, Math.round(moment.seconds * 1e6));

/**
 * The last frame at which something drawn at a frame shows by itself: the end of the rep it was drawn in; outside of
 * reps that have an end, the frame one second of footage later, or the clip's last.
 */
export function usualLastFrame(frame: number, reps: readonly RepEdges[], table: FrameTable): number {
  const ends = reps.flatMap(({ start, end }) => {
    if (end === undefined || frameOf(start, table) > frame) return [];
    const last = frameOf(end, table);
    return last >= frame ? [last] : [];
  });
  if (ends.length > 0) return Math.min(...ends);
  const ticks = table.ticks[frame];
  if (ticks === undefined) return frame;
  return frameAtUs(table, ticksToUs(ticks, table.timeBase) + 1_000_000);
}

/** Whether a frame lies within a drawing's time, both ends included. */
export function showsAt(drawing: { readonly from: Moment; readonly to: Moment }, frame: number, table: FrameTable) {
  return frameOf(drawing.from, table) <= frame && frame <= frameOf(drawing.to, table);
}
