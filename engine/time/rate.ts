import type { FrameTable } from './frameTable.ts';

/** Frames over the time they fill, per second of media time. */
export function meanFps(table: FrameTable): number {
  const first = table.ticks[0] ?? table.endTicks;
  const seconds = ((table.endTicks - first) * table.timeBase.numerator) / table.timeBase.denominator;
  return seconds === 0 ? 0 : table.ticks.length / seconds;
}

/**
 * Whether the frames come at one rate: each lies within one tick of an even grid laid between the first and the
 * last, one tick being what rounding to a coarse time base costs. Two frames or fewer always do.
 */
export function constantRate(table: FrameTable): boolean {
  const [first] = table.ticks;
  const last = table.ticks.at(-1);
  const gaps = table.ticks.length - 1;
  if (first === undefined || last === undefined || gaps < 2) return true;
  const step = (last - first) / gaps;
  return table.ticks.every((ticks, i) => Math.abs(ticks - (first + i * step)) <= 1 + 1e-6);
}
