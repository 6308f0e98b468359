import type { Rep } from '../../engine/review/review.ts';
import { frameAtUs } from '../../engine/time/frames.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';
import type { Moment } from '../../engine/time/moment.ts';

/** The frame of a moment; a moment in seconds is looked up in the table. */
export const frameOfMoment = (moment: Moment, table: FrameTable): number =>
  'frame' in moment ? moment.frame : frameAtUs(table, Math.round(moment.seconds * 1_000_000));

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
