import { median, quantile } from '../signal/quantile.ts';
import { leanDeg, turned } from './angles.ts';
import type { BodyTrack } from './bodyTrack.ts';
import { distancePx } from './points.ts';

/** The bar lies on the shoulders when the shoulder keeps within so many disc radii of the disc's centre. */
const onShoulders = { usual: 1.1, most: 1.6 };
const leastFrames = 8;

/**
 * The trunk's lean by the bar where the bar lies on the shoulders (back or front), frame by frame; null elsewhere. There
 * the disc hides the shoulder, and the network's guess of it wanders; but bar, shoulder and hip keep their angle, as the trunk
 * hardly changes its shape, so that the line from hip to disc leans with the trunk and differs by a constant: the
 * clip's median of the difference from the network's guesses, whose wandering cancels.
 */
export function leanByBar(track: BodyTrack): ((frame: number) => number | null) | null {
  const { disc, points, facing } = track;
  if (disc === null) return null;
  const hipToBar = (frame: number): number | null => {
    const bar = disc.frames[frame] ?? null;
    const hip = points.hip[frame] ?? null;
    if (bar === null || hip === null || distancePx(bar, hip) < disc.radiusPx) return null;
    return leanDeg(hip, bar, facing);
  };
  const seen = track.timesS.flatMap((_, frame) => {
    const bar = disc.frames[frame] ?? null;
    const shoulder = points.shoulder[frame] ?? null;
    const hip = points.hip[frame] ?? null;
    const byBar = hipToBar(frame);
    if (bar === null || shoulder === null || hip === null || byBar === null) return [];
    const apart = distancePx(bar, shoulder) / disc.radiusPx;
    return [{ apart, difference: turned(leanDeg(hip, shoulder, facing) - byBar) }];
  });
  const apart = seen.map((one) => one.apart);
  if (seen.length < leastFrames || median(apart) > onShoulders.usual || quantile(apart, 0.9) > onShoulders.most) {
    return null;
  }
  const offset = median(seen.map(({ difference }) => difference));
  return (frame) => {
    const byBar = hipToBar(frame);
    return byBar === null ? null : turned(byBar + offset);
  };
}
