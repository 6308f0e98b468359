import type { FrameTable } from './frameTable.ts';
import { divideHalfUp, type FootageTimes, type Moment, ticksToUs } from './moment.ts';

const tickOf = (table: FrameTable, frame: number): number => {
  const ticks = table.ticks[frame];
  if (ticks === undefined) throw new RangeError(`The clip has no frame ${frame}.`);
  return ticks;
};

/** Ticks at which a frame goes: the next frame's time, or the clip's end. */
const endTickOf = (table: FrameTable, frame: number): number => table.ticks[frame + 1] ?? table.endTicks;

/** When a frame appears, in media microseconds, rounded half up. Throws a RangeError for a frame that isn't there. */
export function frameStartUs(table: FrameTable, frame: number): number {
  return ticksToUs(tickOf(table, frame), table.timeBase);
}

/** When a frame goes, in media microseconds, rounded half up: the start of the next one, or the clip's end. */
export function frameEndUs(table: FrameTable, frame: number): number {
  tickOf(table, frame);
  return ticksToUs(endTickOf(table, frame), table.timeBase);
}

/** When a frame appears by the clock of its clip, which begins with the first frame, in microseconds. */
export function clockUsAt(table: FrameTable, frame: number): number {
  return frameStartUs(table, frame) - frameStartUs(table, 0);
}

/** How the footage of a table counts its times. */
export const timesOf = (table: FrameTable): FootageTimes => ({
  timeBase: table.timeBase,
  startUs: table.ticks.length === 0 ? 0 : frameStartUs(table, 0),
});

/** The frame of a moment; one in seconds is the frame on screen then, counted from the first frame. Throws a RangeError for a table without frames. */
export const frameOfMoment = (moment: Moment, table: FrameTable): number =>
  'frame' in moment ? moment.frame : frameAtUs(table, frameStartUs(table, 0) + Math.round(moment.seconds * 1_000_000));

/** The same frames, the first of them at 0. */
export function tableFromZero({ timeBase, ticks, endTicks }: FrameTable): FrameTable {
  const [first = 0] = ticks;
  return { timeBase, ticks: ticks.map((tick) => tick - first), endTicks: endTicks - first };
}

/**
 * Where to seek so that a player shows this frame and no other: the middle between its time and the next one's
 * (for the last frame, the clip's end), in media microseconds, rounded half up.
 */
export function seekTargetUs(table: FrameTable, frame: number): number {
  const doubledTicks = BigInt(tickOf(table, frame)) + BigInt(endTickOf(table, frame));
  const dividend = doubledTicks * BigInt(table.timeBase.numerator) * 1_000_000n;
  return Number(divideHalfUp(dividend, 2n * BigInt(table.timeBase.denominator)));
}

/** The share of a clip's frames that may be shorter than what counts as its short frame: a few are cut by the camera. */
const cutShort = 0.1;

/**
 * Where to seek so that a browser of any make shows this frame and no other, in media microseconds: half of a short frame
 * after it appears. At a variable rate some players take a long frame for over once a short one would be, and its middle
 * then shows the next. Throws a RangeError for a frame that the table doesn't have.
 */
export function browserSeekUs(table: FrameTable, frame: number): number {
  const lengths = table.ticks
    .map((tick, index) => (table.ticks[index + 1] ?? table.endTicks) - tick)
    .sort((a, b) => a - b);
  const short = lengths[Math.floor(cutShort * (lengths.length - 1))] ?? 0;
  const start = frameStartUs(table, frame);
  return Math.min(seekTargetUs(table, frame), start + Math.round(ticksToUs(short, table.timeBase) / 2));
}

/**
 * The frame on screen at a media time: the last one whose start, in whole microseconds, is not after it. Before
 * the first frame it is the first, after the end the last. Throws a RangeError for a table without frames.
 */
export function frameAtUs(table: FrameTable, us: number): number {
  tickOf(table, 0);
  let low = 0;
  let high = table.ticks.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (frameStartUs(table, middle) <= us) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** The frame whose start is nearest to a media time; of two equally near, the earlier. */
export function nearestFrame(table: FrameTable, us: number): number {
  const shown = frameAtUs(table, us);
  if (shown === table.ticks.length - 1) return shown;
  return frameStartUs(table, shown + 1) - us < us - frameStartUs(table, shown) ? shown + 1 : shown;
}
