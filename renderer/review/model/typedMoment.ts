import { clockZeroUs, framesShown, holds, type Section } from '../../../engine/framing/section.ts';
import { footageFrame } from '../../../engine/framing/toldTime.ts';
import { frameAtUs, frameEndUs, frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';

/**
 * The frame that somebody typed: minutes and seconds ("0:07.133", "7.13", with a comma too) give the frame shown then, whole
 * digits the number of a frame; both as the clip tells them. Null for anything else, and for what lies outside the clip.
 */
export function frameOfTyped(
  typed: string,
  clip: { readonly section?: Section | undefined },
  table: FrameTable,
): number | null {
  const range = framesShown(clip.section, table);
  const words = typed.trim().replace(',', '.');
  if (/^\d{1,8}$/.test(words)) {
    const frame = footageFrame(clip, Number(words));
    return holds(range, frame) ? frame : null;
  }
  const parts = /^(?:(\d{1,4}):)?(\d{1,5}(?:\.\d{1,6})?)$/.exec(words);
  if (parts === null) return null;
  const zeroUs = clockZeroUs(clip.section, table.timeBase);
  const us = zeroUs + Math.round((Number(parts[1] ?? 0) * 60 + Number(parts[2])) * 1_000_000);
  // Times are written to the millisecond, which may lie a little before the frame that they name.
  const half = 500;
  if (us + half < frameStartUs(table, range.firstFrame) || us >= frameEndUs(table, range.lastFrame)) return null;
  return frameAtUs(table, us + half);
}
