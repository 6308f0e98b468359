import { type Curve, timeOf } from './curve.ts';

/** One unbroken way of the load from one turning point to the next, in lifting seconds. */
export type Move = {
  readonly direction: 'up' | 'down';
  readonly startS: number;
  readonly endS: number;
  /** How far it went, in the curve's unit, always positive. */
  readonly range: number;
  readonly peakSpeed: number;
  readonly peakAtS: number;
  /** The samples of its turning points. */
  readonly fromIndex: number;
  readonly toIndex: number;
};

/** A movement's ends are looked for from where it has covered this share of its range. */
const underWayShare = 0.08;
/** Its ends are read where its speed has sunk to these shares of its peak … */
const slowShare = 0.05;
const slowerShare = 0.2;
/**
 * … and lie beyond the first by this many times the time between the two: a minimum-jerk movement (Flash & Hogan 1985)
 * crosses 5 % and 20 % of its peak 5.94 % and 12.82 % of its duration inside each end. Read at the end itself, this
 * holds for a movement that slows down in its middle as well.
 */
const beyondRatio = 0.0594 / (0.1282 - 0.0594);

/**
 * The ways of the load between turning points that lie at least `leastRange` apart. A stop on the way is part of the
 * way, however long; a stop at a turning point is not.
 */
export function movesOf(curve: Curve, leastRange: number): Move[] {
  const turns = turningPoints(curve.values, leastRange);
  const moves: Move[] = [];
  for (let index = 1; index < turns.length; index += 1) {
    const from = turns[index - 1];
    const to = turns[index];
    if (!from || !to || !isUnbroken(curve, from.index, to.index)) continue;
    const move = moveBetween(curve, from.index, to.index);
    if (move) moves.push(move);
  }
  return withoutOverlap(moves);
}

type Turn = { readonly index: number; readonly value: number };

/** Extremes that alternate, each at least `leastRange` from the one before. */
function turningPoints(values: readonly (number | null)[], leastRange: number): Turn[] {
  const turns: Turn[] = [];
  let high: Turn | null = null;
  let low: Turn | null = null;
  let heading: 'up' | 'down' | null = null;
  values.forEach((value, index) => {
    if (value === null) return;
    const here = { index, value };
    if (!high || value > high.value) high = here;
    if (!low || value < low.value) low = here;
    if (heading !== 'down' && high.value - value >= leastRange) {
      turns.push(high);
      heading = 'down';
      low = here;
    } else if (heading !== 'up' && value - low.value >= leastRange) {
      turns.push(low);
      heading = 'up';
      high = here;
    }
    if (heading === 'down' && value <= low.value) high = here;
    if (heading === 'up' && value >= high.value) low = here;
  });
  const last: Turn | null = heading === 'down' ? low : heading === 'up' ? high : null;
  return last ? [...turns, last] : turns;
}

function isUnbroken({ values }: Curve, from: number, to: number): boolean {
  for (let index = from; index <= to; index += 1) if (values[index] === null) return false;
  return true;
}

/** The way between two samples, its ends where it sets out and where it comes to rest; null for none. */
export function moveBetween(curve: Curve, fromIndex: number, toIndex: number): Move | null {
  const fromValue = curve.values[fromIndex] ?? null;
  const toValue = curve.values[toIndex] ?? null;
  if (fromValue === null || toValue === null || toIndex <= fromIndex) return null;
  const from = { index: fromIndex, value: fromValue };
  const to = { index: toIndex, value: toValue };
  const sense = to.value > from.value ? 1 : -1;
  const range = Math.abs(to.value - from.value);
  const wayAt = (index: number) => ((curve.values[index] ?? from.value) - from.value) * sense;
  const speedAt = (index: number) => (curve.speeds[index] ?? 0) * sense;
  let peak = from.index;
  let first = to.index;
  let last = from.index;
  for (let index = from.index; index <= to.index; index += 1) {
    if (speedAt(index) > speedAt(peak)) peak = index;
    if (wayAt(index) >= underWayShare * range) first = Math.min(first, index);
    if (wayAt(index) <= (1 - underWayShare) * range) last = Math.max(last, index);
  }
  const peakSpeed = speedAt(peak);
  if (!(peakSpeed > 0)) return null;
  const endOf = (from: number, step: 1 | -1, stop: number) => {
    const early = crossing(curve, { from, step, stop, limit: slowerShare * peakSpeed, speedAt });
    const late = crossing(curve, { from, step, stop, limit: slowShare * peakSpeed, speedAt });
    return late + (late - early) * beyondRatio;
  };
  const startS = endOf(first, -1, from.index);
  const endS = endOf(last, 1, to.index);
  if (!(endS > startS)) return null;
  return {
    direction: sense > 0 ? 'up' : 'down',
    startS,
    endS,
    range,
    peakSpeed,
    peakAtS: timeOf(curve, peak) + peakOffset(speedAt, peak) * curve.stepS,
    fromIndex,
    toIndex,
  };
}

/** When the speed sinks to the limit, walking from where the movement is under way; between samples evenly. */
function crossing(
  curve: Curve,
  {
    from,
    step,
    stop,
    limit,
    speedAt,
  }: {
    readonly from: number;
    readonly step: 1 | -1;
    readonly stop: number;
    readonly limit: number;
    readonly speedAt: (index: number) => number;
  },
): number {
  let index = from;
  while (index !== stop && speedAt(index) > limit) index += step;
  const here = speedAt(index);
  const before = speedAt(index - step);
  const back = index === from || here >= limit || before <= here ? 0 : (limit - here) / (before - here);
  return timeOf(curve, index - step * back);
}

/** Where a peak lies between samples, by a parabola. */
function peakOffset(speedAt: (index: number) => number, peak: number): number {
  const before = speedAt(peak - 1);
  const here = speedAt(peak);
  const after = speedAt(peak + 1);
  const bend = before - 2 * here + after;
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (before - after)) / bend)) : 0;
}

/** Two ways that meet without a stop were each lengthened a little past their meeting: it is put in the middle. */
function withoutOverlap(moves: readonly Move[]): Move[] {
  const kept = [...moves];
  for (let index = 1; index < kept.length; index += 1) {
    const before = kept[index - 1];
    const after = kept[index];
    if (!before || !after || before.endS <= after.startS) continue;
    const meetS = (before.endS + after.startS) / 2;
    kept[index - 1] = { ...before, endS: meetS };
    kept[index] = { ...after, startS: meetS };
  }
  return kept;
}
