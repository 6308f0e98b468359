import type { Body } from '../../recording/recording.ts';
import { jointOf, otherSide, type Part } from './parts.ts';
import { distancePx } from './places.ts';

/** Joints that change sides together when the network takes one limb for the other. */
const limbs: readonly (readonly Part[])[] = [['hip', 'knee', 'ankle'], ['shoulder', 'elbow', 'wrist'], ['ear']];
/** Changing sides has to shorten the limb's way since the last frame to this share, and by so much of the body's height. */
const shorter = { share: 0.6, ofHeight: 0.04 };

/** For a frame and a joint, whether the network called left right there. */
export type Swapped = (frame: number, part: Part) => boolean;

/**
 * Finds where the network takes left for right: where a limb goes on from the frames before with its sides changed, and not
 * as it is. What most frames call left is left.
 */
export function swappedSides(bodies: readonly (Body | null)[], heightPx: number): Swapped {
  const swaps = new Map<Part, readonly boolean[]>();
  for (const limb of limbs) {
    const swapped = swapsOf(bodies, limb, heightPx);
    const mostly = swapped.filter(Boolean).length > swapped.length / 2;
    for (const part of limb) swaps.set(part, mostly ? swapped.map((one) => !one) : swapped);
  }
  return (frame, part) => swaps.get(part)?.[frame] ?? false;
}

function swapsOf(bodies: readonly (Body | null)[], limb: readonly Part[], heightPx: number): readonly boolean[] {
  let last: Body | null = null;
  let swapped = false;
  return bodies.map((body) => {
    if (body === null) return swapped;
    if (last !== null) {
      const straight = wayOf(last, body, limb, 'straight');
      const crossed = wayOf(last, body, limb, 'crossed');
      const gainPx = straight - crossed;
      if (crossed < shorter.share * straight && gainPx > shorter.ofHeight * heightPx) swapped = !swapped;
    }
    last = body;
    return swapped;
  });
}

/** How far the limb's joints went from one body to the next, both sides together. */
function wayOf(from: Body, to: Body, limb: readonly Part[], sides: 'straight' | 'crossed'): number {
  return limb.reduce((sum, part) => {
    const ways = (['left', 'right'] as const).map((side) =>
      distancePx(jointOf(from, part, side), jointOf(to, part, sides === 'straight' ? side : otherSide(side))),
    );
    return sum + ways.reduce((all, way) => all + way, 0);
  }, 0);
}
