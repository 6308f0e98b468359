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
/** How long a load is looked at for that: a time, or a share of the move where that is less. */
const cutWindow = { s: 0.2, ofMove: 0.15 } as const;
/** Smoothing moves an extreme away from the curve's end by up to this. */
const nearEndS = 0.15;
/** A long way is also looked at in part, from or to where the load slows or is level with the cycle's other end. */
const longerBy = 1.15;
/** The load slows where its speed is below this share of its peak on either side. */
const slowShare = 0.35;
/** On either side of a slow place it moves at this share of the way's highest speed: in a rest it does not. */
const besideShare = 0.1;
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
        cutAtStart: isNear(before.index, run.from, curve) && movesIn(before.index, far.index, before.index),
        cutAtEnd:
          after === null || (isNear(after.index, run.to, curve) && movesIn(far.index, after.index, after.index)),
        cutOnWayOut: after === null && isNear(far.index, run.to, curve) && movesIn(before.index, far.index, far.index),
        lastSeen: run.to,
      },
    ];
  });
}

const windowOf = ({ from, to }: Way, stepS: number): number =>
  Math.min(to - from, Math.max(1, Math.round(Math.min(cutWindow.s / stepS, cutWindow.ofMove * (to - from)))));

/** Whether a sample lies at an end of the curve, or so near that only smoothing has moved it from there. */
const isNear = (index: number, end: number, { stepS }: Curve): boolean => Math.abs(index - end) * stepS <= nearEndS;

/** Does the load move on at the curve's end, beside the fastest that it moves between two samples? Over a short time, as single speeds are noise. */
function isFast({ values, stepS }: Curve, { from, to, at }: { from: number; to: number; at: number }): boolean {
  const window = windowOf({ from, to }, stepS);
  const way = (index: number) => Math.abs((values[index + window] ?? 0) - (values[index] ?? 0));
  let most = 0;
  for (let index = from; index + window <= to; index += 1) most = Math.max(most, way(index));
  return way(at === from ? from : to - window) > cutShare * most;
}

/** The same cycle with its longer way cut where the load is level with the other end, or both where it slows at one level. */
function partsOf(curve: Curve, cycle: Cycle): Cycle[] {
  const { from, far, to, outRange, backRange } = cycle;
  if (to === null) return [];
  const shorter = Math.min(outRange, backRange);
  const out = { from, to: far };
  const back = { from: far, to };
  if (outRange > longerBy * backRange) {
    const starts = [...slowPlaces(curve, out), ...crossings(curve, out, to).slice(-1)];
    return starts.flatMap((start) => part(curve, cycle, { from: start, to }, levelShare * shorter));
  }
  if (backRange > longerBy * outRange) {
    const ends = [...slowPlaces(curve, back), ...crossings(curve, back, from).slice(0, 1)];
    return ends.flatMap((end) => part(curve, cycle, { from, to: end }, levelShare * shorter));
  }
  const ends = slowPlaces(curve, back);
  return slowPlaces(curve, out).flatMap((start) =>
    ends.flatMap((end) => part(curve, cycle, { from: start, to: end }, levelShare * heightBetween(curve, start, far))),
  );
}

const heightBetween = ({ values }: Curve, one: number, other: number): number =>
  Math.abs((values[one] ?? 0) - (values[other] ?? 0));

/** The part of a cycle between two samples, if they are level. */
function part(curve: Curve, cycle: Cycle, { from, to }: { from: number; to: number }, within: number): Cycle[] {
  if (heightBetween(curve, from, to) > within) return [];
  return [
    {
      ...cycle,
      from,
      to,
      outRange: heightBetween(curve, from, cycle.far),
      backRange: heightBetween(curve, cycle.far, to),
      cutAtStart: cycle.cutAtStart && from === cycle.from,
      cutAtEnd: cycle.cutAtEnd && to === cycle.to,
    },
  ];
}

type Way = { readonly from: number; readonly to: number };

/** Samples of a way at which the load slows down and goes on. */
function slowPlaces({ speeds }: Curve, { from, to }: Way): number[] {
  const speedAt = (index: number) => Math.abs(speeds[index] ?? 0);
  const peakAfter = Array.from({ length: to - from + 1 }, () => 0);
  for (let index = to - 1; index >= from; index -= 1) {
    peakAfter[index - from] = Math.max(peakAfter[index - from + 1] ?? 0, speedAt(index));
  }
  const peak = peakAfter[0] ?? 0;
  const places: number[] = [];
  let peakBefore = 0;
  for (let index = from + 1; index < to; index += 1) {
    peakBefore = Math.max(peakBefore, speedAt(index));
    const slower = Math.min(peakBefore, peakAfter[index - from] ?? 0);
    const isLeast = speedAt(index) < speedAt(index - 1) && speedAt(index) <= speedAt(index + 1);
    if (isLeast && slower >= besideShare * peak && speedAt(index) < slowShare * slower) places.push(index);
  }
  return places;
}

/** Samples of a way at which the load passes the height of another sample. */
function crossings({ values }: Curve, { from, to }: Way, levelAt: number): number[] {
  const level = values[levelAt] ?? 0;
  const found: number[] = [];
  for (let index = from + 1; index < to; index += 1) {
    if (((values[index - 1] ?? level) - level) * ((values[index] ?? level) - level) <= 0) found.push(index);
  }
  return found;
}
