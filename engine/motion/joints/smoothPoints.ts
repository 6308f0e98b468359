import type { PointPx } from '../../recording/recording.ts';
import { median } from '../signal/quantile.ts';
import { distancePx } from './points.ts';

/** A point at a moment. */
export type Sample = PointPx & { readonly atS: number };

/** Half-width of the curve that weighs neighbours, as a standard deviation. */
const sigmaS = 0.08;
const reachS = 3 * sigmaS;
/** A stretch without a sample is bridged when it is no longer than this, or lacks no more than one of few samples a second. */
const longestBridge = { s: 0.35, spacings: 2.2 };
/** A moment this close before the first or after the last sample still has a point. */
const longestOverhangS = 0.05;
const jumpWindowS = 0.2;

/**
 * Leaves out samples that jump: those further than `mostPx` from the middle of as many neighbours before as after. A quick
 * steady movement is no jump, as the middle moves with it. Samples without two neighbours on either side stay.
 */
export function withoutJumps<S extends Sample>(samples: readonly S[], mostPx: number): readonly S[] {
  return samples.filter((sample, i) => {
    const isNear = (other: S) => Math.abs(other.atS - sample.atS) <= jumpWindowS;
    let reach = 0;
    while (reach < i && i + reach + 1 < samples.length) {
      const [before, after] = [samples[i - reach - 1], samples[i + reach + 1]];
      if (before === undefined || after === undefined || !isNear(before) || !isNear(after)) break;
      reach += 1;
    }
    if (reach < 2) return true;
    const around = samples.slice(i - reach, i + reach + 1);
    const middle = { xPx: median(around.map(({ xPx }) => xPx)), yPx: median(around.map(({ yPx }) => yPx)) };
    return distancePx(sample, middle) <= mostPx;
  });
}

/**
 * A smooth path through samples at uneven moments, read at other moments: a parabola through the neighbours of each
 * moment, so that turning points keep their height. Null where nothing was seen for too long.
 *
 * @param samples in order of time
 */
export function smoothPoints(samples: readonly Sample[], timesS: readonly number[]): readonly (PointPx | null)[] {
  const bridgeS = Math.max(longestBridge.s, longestBridge.spacings * usualSpacingS(samples));
  let from = 0;
  return timesS.map((timeS) => {
    while (from < samples.length && (samples[from]?.atS ?? 0) < timeS - reachS) from += 1;
    const near: Sample[] = [];
    for (let i = from; i < samples.length; i += 1) {
      const sample = samples[i];
      if (sample === undefined || sample.atS > timeS + reachS) break;
      near.push(sample);
    }
    const before = near.filter(({ atS }) => atS <= timeS);
    const after = near.filter(({ atS }) => atS >= timeS);
    const last = before.at(-1);
    const next = after[0];
    if (last === undefined && next === undefined) return null;
    if (last !== undefined && next !== undefined) {
      if (next.atS - last.atS > bridgeS) return null;
    } else if (Math.abs((last ?? next ?? { atS: timeS }).atS - timeS) > longestOverhangS) return null;
    const curved = before.length >= 3 && after.length >= 3;
    return { xPx: fitAt(near, timeS, 'xPx', curved ? 3 : 2), yPx: fitAt(near, timeS, 'yPx', curved ? 3 : 2) };
  });
}

/** Seconds from a sample to the next, in the middle of all; 0 for fewer than two. */
function usualSpacingS(samples: readonly Sample[]): number {
  const spacings = samples.flatMap(({ atS }, i) => (i === 0 ? [] : [atS - (samples[i - 1]?.atS ?? atS)]));
  return spacings.length === 0 ? 0 : median(spacings);
}

/** Value at the moment of the weighted least-squares polynomial through the samples; `terms`: 2 a line, 3 a parabola. */
function fitAt(near: readonly Sample[], timeS: number, axis: 'xPx' | 'yPx', terms: 2 | 3): number {
  const moments = [0, 0, 0, 0, 0];
  const sums = [0, 0, 0];
  for (const sample of near) {
    const t = (sample.atS - timeS) / sigmaS;
    const weight = Math.exp(-(t * t) / 2);
    let power = weight;
    for (let i = 0; i < 5; i += 1) {
      moments[i] = (moments[i] ?? 0) + power;
      if (i < 3) sums[i] = (sums[i] ?? 0) + power * sample[axis];
      power *= t;
    }
  }
  const [m0 = 0, m1 = 0, m2 = 0, m3 = 0, m4 = 0] = moments;
  const [s0 = 0, s1 = 0, s2 = 0] = sums;
  if (terms === 3) {
    const whole = m0 * (m2 * m4 - m3 * m3) - m1 * (m1 * m4 - m2 * m3) + m2 * (m1 * m3 - m2 * m2);
    if (Math.abs(whole) > 1e-9) {
      return (s0 * (m2 * m4 - m3 * m3) - s1 * (m1 * m4 - m2 * m3) + s2 * (m1 * m3 - m2 * m2)) / whole;
    }
  }
  const line = m0 * m2 - m1 * m1;
  return Math.abs(line) > 1e-9 ? (s0 * m2 - s1 * m1) / line : s0 / m0;
}
