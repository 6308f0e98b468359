import * as v from 'valibot';
import type { FrameTable } from '../time/frameTable.ts';
import { exactMomentSchema, ticksToUs } from '../time/moment.ts';

/** The stretch of its footage that a clip shows: its first and last frame, by the footage's own numbers. */
export const sectionSchema = v.strictObject({ from: exactMomentSchema, to: exactMomentSchema });
export type Section = v.InferOutput<typeof sectionSchema>;

/** Frames from one to another, both included. */
export type FrameRange = { readonly firstFrame: number; readonly lastFrame: number };

/** The frames of footage that a clip shows; all of them without a section. */
export function framesShown(section: Section | null | undefined, { ticks }: Pick<FrameTable, 'ticks'>): FrameRange {
  const last = Math.max(0, ticks.length - 1);
  if (!section) return { firstFrame: 0, lastFrame: last };
  const firstFrame = Math.min(section.from.frame, last);
  return { firstFrame, lastFrame: Math.max(firstFrame, Math.min(section.to.frame, last)) };
}

/** Whether a range is all of its footage. */
export const isWhole = ({ firstFrame, lastFrame }: FrameRange, { ticks }: Pick<FrameTable, 'ticks'>): boolean =>
  firstFrame === 0 && lastFrame === ticks.length - 1;

export const holds = ({ firstFrame, lastFrame }: FrameRange, frame: number): boolean =>
  frame >= firstFrame && frame <= lastFrame;

/** The frame of a range that is nearest to a frame. */
export const nearestIn = ({ firstFrame, lastFrame }: FrameRange, frame: number): number =>
  Math.min(Math.max(frame, firstFrame), lastFrame);

/** The times of the frames of a range, as they are in the footage. */
export function tableOf({ timeBase, ticks, endTicks }: FrameTable, { firstFrame, lastFrame }: FrameRange): FrameTable {
  return { timeBase, ticks: ticks.slice(firstFrame, lastFrame + 1), endTicks: ticks[lastFrame + 1] ?? endTicks };
}

/** When a clip's clock begins, in media microseconds of its footage: at the first frame of its section, else at 0. */
export function clockZeroUs(section: Section | null | undefined, timeBase: FrameTable['timeBase'] | undefined): number {
  return section && timeBase ? ticksToUs(section.from.ticks, timeBase) : 0;
}
