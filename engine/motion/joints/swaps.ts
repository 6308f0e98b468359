import type { Body } from '../recording.ts';
import { jointOf, otherSide, type Part, type Side } from './parts.ts';
import { distancePx } from './places.ts';

/** Joints that change sides together when the network takes one limb for the other. */
const limbs = [['hip', 'knee', 'ankle'], ['shoulder', 'elbow', 'wrist'], ['ear']] as const;
/** A swap has to bring the limb so much nearer to where it was than leaving it would. */
const gain = 0.6;

/**
 * For each limb and frame, whether the network took left for right there: where the limb's joints, sides changed, go on from
 * the frames before and as they are do not. What most frames call left is left.
 */
export function swappedSides(
  bodies: readonly (Body | null)[],
  side: Side,
): (frame: number, part: Part) => boolean {
  const swaps = new Map<Part, readonly boolean[]>();
  for (const limb of limbs) {
    const swapped = swapsOf(bodies, limb, side);
    const most = swapped.filter(Boolean).length > bodies.filter((body) => body !== null).length / 2;
    for (const part of limb) swaps.set(part, swapped.map((one) => one !== most));
  }
  return (frame, part) => swaps.get(part)?.[frame] ?? false;
}

function swapsOf(bodies: readonly (Body | null)[], limb: readonly Part[], side: Side): readonly boolean[] {
  let before: { readonly body: Body; readonly swapped: boolean } | null = null;
  return bodies.map((body) => {
    if (body === null) return before?.swapped ?? false;
    let swapped = false;
    if (before !== null) {
      const { body: last, swapped: lastSwapped } = before;
      const way = (crossed: boolean) => limb.reduce((sum, part) => sum + stepPx(last, body, part, side, crossed), 0);
      swapped = way(true) < gain * way(false) ? !lastSwapped : lastSwapped;
    }
    before = { body, swapped };
    return swapped;
  });
}
