import type { FrameRange } from '../../../engine/framing/section.ts';
import { frameAtUs, frameEndUs, frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';

/** The part of the clip that the strip shows, as shares of its length: all of it is from 0 to 1. */
export type StripWindow = { readonly from: number; readonly to: number };

export const wholeClip: StripWindow = { from: 0, to: 1 };

/** The shortest part: a hundredth of the clip. */
const shortest = 0.01;

const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** A window of a given length that begins at a share, kept inside what can be shown of the clip. */
function windowFrom(from: number, length: number, { from: first, to: last }: StripWindow): StripWindow {
  const held = clamp(from, first, Math.max(first, last - length));
  return { from: held, to: held + length };
}

/** Where a share of the clip lies in the window, 0-1; outside for what is not shown. */
export const inWindow = ({ from, to }: StripWindow, share: number): number => (share - from) / (to - from);

/** The share of the clip at a position along the strip, 0-1. */
export const shareAt = ({ from, to }: StripWindow, position: number): number => from + position * (to - from);

/** Shows more or less of the clip; what lies at a position along the strip stays there. */
export function zoomWindow(
  window: StripWindow,
  position: number,
  factor: number,
  bounds: StripWindow = wholeClip,
): StripWindow {
  const all = bounds.to - bounds.from;
  const length = clamp((window.to - window.from) / factor, shortest * all, all);
  return windowFrom(shareAt(window, position) - position * length, length, bounds);
}

/** Moves the window along the clip, by a share of what it shows. */
export const panWindow = (window: StripWindow, by: number, bounds: StripWindow = wholeClip): StripWindow =>
  windowFrom(window.from + by * (window.to - window.from), window.to - window.from, bounds);

/** Moves the window so that a share of the clip shows a tenth inside it; unchanged where it shows already. */
export function follow(window: StripWindow, share: number, bounds: StripWindow = wholeClip): StripWindow {
  if (share >= window.from && share <= window.to) return window;
  const length = window.to - window.from;
  return windowFrom(share < window.from ? share - length * 0.9 : share - length * 0.1, length, bounds);
}

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

/** The frame at a share of the clip; shares outside of 0-1 belong to the ends. */
export function frameAtShare(table: FrameTable, share: number): number {
  const { startUs, lengthUs } = span(table);
  return frameAtUs(table, Math.round(startUs + share * lengthUs));
}

/** The window of some frames, from the first's time to the end of the last. */
export function windowOfFrames(table: FrameTable, { firstFrame, lastFrame }: FrameRange): StripWindow {
  const last = table.ticks.length - 1;
  if (firstFrame <= 0 && lastFrame >= last) return wholeClip;
  return { from: shareOfFrame(table, firstFrame), to: lastFrame >= last ? 1 : shareOfFrame(table, lastFrame + 1) };
}
