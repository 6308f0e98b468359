import { frameAtUs, frameEndUs, frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';

/** From the first frame's time to the end of the last one. */
function span(table: FrameTable): { readonly startUs: number; readonly lengthUs: number } {
  const startUs = frameStartUs(table, 0);
  return { startUs, lengthUs: frameEndUs(table, table.ticks.length - 1) - startUs };
}

/** Where a frame begins along the strip, 0-1: by time, so that a variable rate is shown as it is. */
export function shareOfFrame(table: FrameTable, frame: number): number {
  const { startUs, lengthUs } = span(table);
  const held = Math.min(Math.max(0, frame), table.ticks.length - 1);
  return lengthUs <= 0 ? 0 : (frameStartUs(table, held) - startUs) / lengthUs;
}

/** The frame under a place along the strip; places outside belong to the ends. */
export function frameAtShare(table: FrameTable, share: number): number {
  const { startUs, lengthUs } = span(table);
  return frameAtUs(table, Math.round(startUs + share * lengthUs));
}
