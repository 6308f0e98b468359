import { type Curve, indexAt, timeOf } from './curve.ts';
import { endsByHeight } from './endsByHeight.ts';
import { endsOf } from './moveEnds.ts';

/** One movement of the load from a turning point to the next, in lifting seconds. */
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

/** A curve that wanders by this share of a move's range drowns its speed near rest. */
const noisyShare = 0.004;

/** Whether the speed of a move of a range drowns near rest in how far the curve wanders. */
export const drownsInWander = ({ wander = 0 }: Curve, range: number): boolean => wander > noisyShare * range;

/** The move between two samples, from where it starts to where it comes to rest; null when there is none. */
export function moveBetween(curve: Curve, fromIndex: number, toIndex: number): Move | null {
  const fromValue = curve.values[fromIndex] ?? null;
  const toValue = curve.values[toIndex] ?? null;
  if (fromValue === null || toValue === null || toIndex <= fromIndex) return null;
  const sense = toValue > fromValue ? 1 : -1;
  const range = Math.abs(toValue - fromValue);
  const speedAt = (index: number) => (curve.speeds[index] ?? 0) * sense;
  let peak = fromIndex;
  for (let index = fromIndex; index <= toIndex; index += 1) if (speedAt(index) > speedAt(peak)) peak = index;
  const peakSpeed = speedAt(peak);
  if (!(peakSpeed > 0)) return null;
  const untimed = { fromIndex, toIndex, sense, range, peakSpeed } as const;
  const { wander = 0 } = curve;
  const { startS, endS } = drownsInWander(curve, range) ? endsByHeight(curve, untimed, wander) : endsOf(curve, untimed);
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

/** The move between two moments that are given, whatever the load does there: its range and peak may be 0. */
export function moveFromTo(
  curve: Curve,
  { direction, startS, endS }: { readonly direction: 'up' | 'down'; readonly startS: number; readonly endS: number },
): Move {
  const sense = direction === 'up' ? 1 : -1;
  const [fromIndex, toIndex] = [indexAt(curve, startS), indexAt(curve, endS)];
  const startValue = curve.values[fromIndex] ?? null;
  const speedAt = (index: number) => (curve.speeds[index] ?? 0) * sense;
  let range = 0;
  let peak = fromIndex;
  for (let index = fromIndex; index <= toIndex; index += 1) {
    const value = curve.values[index] ?? null;
    if (value !== null && startValue !== null) range = Math.max(range, (value - startValue) * sense);
    if (speedAt(index) > speedAt(peak)) peak = index;
  }
  const peakAtS = timeOf(curve, peak) + peakOffset(speedAt, peak) * curve.stepS;
  return {
    direction,
    startS,
    endS,
    range,
    peakSpeed: Math.max(0, speedAt(peak)),
    peakAtS: Math.min(endS, Math.max(startS, peakAtS)),
    fromIndex,
    toIndex,
  };
}

/** Where a peak lies between samples, by a parabola. */
function peakOffset(speedAt: (index: number) => number, peak: number): number {
  const before = speedAt(peak - 1);
  const here = speedAt(peak);
  const after = speedAt(peak + 1);
  const bend = before - 2 * here + after;
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (before - after)) / bend)) : 0;
}

/** Moves that meet without a stop each reach a little past the meeting point: they are cut half-way. */
export function withoutOverlap(moves: readonly Move[]): Move[] {
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
