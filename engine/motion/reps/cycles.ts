import { knownRuns } from '../signal/evenGrid.ts';
import type { Curve } from './curve.ts';
import { type Turn, turningPoints } from './turningPoints.ts';

/** The load's way out and back, by the samples where it starts, turns and ends: something that may be a rep. */
export type Cycle = {
  readonly from: number;
  readonly far: number;
  /** Null where the curve ends before the way back does. */
  readonly to: number | null;
  /** How far the load goes out, and back. */
  readonly outRange: number;
  readonly backRange: number;
  /** The curve begins in the way out, so that its beginning was not seen. */
  readonly cutAtStart: boolean;
  /** The curve ends in the way back or before it. */
  readonly cutAtEnd: boolean;
  /** The curve ends before the way out does. */
  readonly cutOnWayOut: boolean;
  /** The last sample of the stretch that it lies in. */
  readonly lastSeen: number;
};

/** Each scale of movement is looked at by itself: a hitch in a rep is a turn at a fine scale, and nothing at a coarse one. */
const scaleStep = 1.3;
/** A move still faster than this share of its peak where the footage begins or ends was seen only in part. */
const cutShare = 0.2;
/** A long way is also looked at in part, from or to where the load slows or is level with the cycle's other end. */
const longerBy = 1.15;
/** The load slows where its speed is below this share of its peak on either side. */
const slowShare = 0.35;
/** A slow place counts when it lies this near to level, as a share of the shorter way. */
const levelShare = 0.3;

/**
 * All ways out and back of a curve at every scale from `leastRange` on, in no order. `sense`: 1 = the way out goes upward.
 * A cycle never lies across a gap.
 */
export function cyclesOf(
  curve: Curve,
  { sense, leastRange }: { readonly sense: 1 | -1; readonly leastRange: number },
): Cycle[] {
  const found = new Map<string, Cycle>();
  const add = (cycle: Cycle) => found.set(`${cycle.from} ${cycle.far} ${cycle.to}`, cycle);
  for (const { from, values } of knownRuns(curve.values)) {
    const run = { from, to: from + values.length - 1 };
    const whole = Math.max(...values) - Math.min(...values);
    for (let least = leastRange; least <= whole; least *= scaleStep) {
      const turns = turningPoints(values, least).map(({ index, value }) => ({ index: from + index, value }));
      for (const cycle of cyclesBetween(curve, turns, { sense, run })) {
        add(cycle);
        for (const part of partsOf(curve, cycle)) add(part);
      }
    }
  }
  return [...found.values()];
}

type Run = { readonly from: number; readonly to: number };

function cyclesBetween(
  curve: Curve,
  turns: readonly Turn[],
  { sense, run }: { readonly sense: 1 | -1; readonly run: Run },
): Cycle[] {
  return turns.flatMap((far, place) => {
    const before = turns[place - 1];
    const after = turns[place + 1] ?? null;
    if (!before || (far.value - before.value) * sense <= 0) return [];
    const outRange = Math.abs(far.value - before.value);
    const backRange = after ? Math.abs(far.value - after.value) : 0;
    const movesIn = (from: number, to: number, at: number) => isFast(curve, { from, to, at });
    return [
      {
        from: before.index,
        far: far.index,
        to: after === null ? null : after.index,
        outRange,
        backRange,
        cutAtStart: before.index === run.from && movesIn(before.index, far.index, before.index),
        cutAtEnd: after === null || (after.index === run.to && movesIn(far.index, after.index, after.index)),
        cutOnWayOut: after === null && far.index === run.to && movesIn(before.index, far.index, far.index),
        lastSeen: run.to,
      },
    ];
  });
}

/** Does the load move at a sample, beside the fastest that it moves between two? */
function isFast({ speeds }: Curve, { from, to, at }: { from: number; to: number; at: number }): boolean {
  let peak = 0;
  for (let index = from; index <= to; index += 1) peak = Math.max(peak, Math.abs(speeds[index] ?? 0));
  return Math.abs(speeds[at] ?? 0) > cutShare * peak;
}

/** The same cycle with its longer way cut: where the load slows near the level of the other end, and where it passes it. */
function partsOf(curve: Curve, cycle: Cycle): Cycle[] {
  const { from, far, to, outRange, backRange } = cycle;
  if (to === null) return [];
  const heightFrom = (index: number, level: number) =>
    Math.abs((curve.values[index] ?? 0) - (curve.values[level] ?? 0));
  if (outRange > longerBy * backRange) {
    return placesAtLevel(curve, { from, to: far, level: to, within: levelShare * backRange, last: true }).map(
      (start) => ({
        ...cycle,
        from: start,
        outRange: heightFrom(start, far),
        cutAtStart: false,
      }),
    );
  }
  if (backRange > longerBy * outRange) {
    return placesAtLevel(curve, { from: far, to, level: from, within: levelShare * outRange, last: false }).map(
      (end) => ({
        ...cycle,
        to: end,
        backRange: heightFrom(end, far),
        cutAtEnd: false,
      }),
    );
  }
  return [];
}

/** Samples of a way near the level of another: where it slows, and the last or first at which it passes that level. */
function placesAtLevel(
  { values, speeds }: Curve,
  way: {
    readonly from: number;
    readonly to: number;
    readonly level: number;
    readonly within: number;
    readonly last: boolean;
  },
): number[] {
  const level = values[way.level] ?? 0;
  const speedAt = (index: number) => Math.abs(speeds[index] ?? 0);
  const isNear = (index: number) => Math.abs((values[index] ?? level) - level) <= way.within;
  const peaks = { before: 0, after: Array.from({ length: way.to - way.from + 1 }, () => 0) };
  for (let index = way.to - 1; index >= way.from; index -= 1) {
    const place = index - way.from;
    peaks.after[place] = Math.max(peaks.after[place + 1] ?? 0, speedAt(index));
  }
  const places: number[] = [];
  let crossed: number | null = null;
  for (let index = way.from + 1; index < way.to; index += 1) {
    peaks.before = Math.max(peaks.before, speedAt(index));
    const limit = slowShare * Math.min(peaks.before, peaks.after[index - way.from] ?? 0);
    const isLeast = speedAt(index) < speedAt(index - 1) && speedAt(index) <= speedAt(index + 1);
    if (isLeast && speedAt(index) < limit && isNear(index)) places.push(index);
    const crosses = ((values[index - 1] ?? level) - level) * ((values[index] ?? level) - level) <= 0;
    if (crosses && (way.last || crossed === null)) crossed = index;
  }
  return crossed === null ? places : [...places, crossed];
}
