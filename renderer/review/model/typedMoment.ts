import { frameAtUs, frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { ticksToUs } from '../../../engine/time/moment.ts';

/**
 * The frame that somebody typed: minutes and seconds ("0:07.133", "7.13", with a comma too) give the frame shown then, whole
 * digits the number of a frame. Null for anything else, and for what lies outside the clip.
 */
export function frameOfTyped(typed: string, table: FrameTable): number | null {
  const words = typed.trim().replace(',', '.');
  if (/^\d{1,8}$/.test(words)) return Number(words) < table.ticks.length ? Number(words) : null;
  const parts = /^(?:(\d{1,4}):)?(\d{1,5}(?:\.\d{1,6})?)$/.exec(words);
  if (parts === null) return null;
  const us = Math.round((Number(parts[1] ?? 0) * 60 + Number(parts[2])) * 1_000_000);
  // Times are written to the millisecond, which may lie a little before the frame that they name.
  const half = 500;
  if (us + half < frameStartUs(table, 0) || us >= ticksToUs(table.endTicks, table.timeBase)) return null;
  return frameAtUs(table, us + half);
}
