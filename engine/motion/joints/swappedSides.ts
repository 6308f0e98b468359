import type { Body } from '../../recording/recording.ts';
import { type Bodies, distancePx, jointOf, otherSide, type Part } from './points.ts';

/** Joints that swap sides together when the network takes one limb for the other. */
const limbs: readonly (readonly Part[])[] = [['hip', 'knee', 'ankle'], ['shoulder', 'elbow', 'wrist'], ['ear']];

/** What a change of sides costs, in body heights that both sides' joints travel together: nothing less is explained by one. */
const changeCost = 0.04;
/** What it costs in each frame that the sides are others than the network says: it is right in most. */
const frameCost = 0.002;
/** Joints less sure than this count for less. */
const sureConfidence = 0.4;
/** After a longer gap nothing tells whether the sides go on. */
const longestGapS = 0.5;

/** For a frame and a joint, whether the network called left right there. */
export type Swapped = (frame: number, part: Part) => boolean;

/**
 * Finds where the network takes left for right: where a limb goes on from the frames before with its sides swapped, but not as
 * it is. What most frames call left is left.
 *
 * @param timesS seconds of each frame
 * @param heightPx standing height of the lifter
 */
export function swappedSides(
  { frames }: Bodies,
  { timesS, heightPx }: { readonly timesS: readonly number[]; readonly heightPx: number },
): Swapped {
  const swaps = new Map<Part, readonly boolean[]>();
  for (const limb of limbs) {
    const swapped = swapsOf(frames, { limb, timesS, heightPx });
    const mostly = swapped.filter(Boolean).length > swapped.length / 2;
    for (const part of limb) swaps.set(part, mostly ? swapped.map((one) => !one) : swapped);
  }
  return (frame, part) => swaps.get(part)?.[frame] ?? false;
}

type Costs = readonly [asSeen: number, swapped: number];

/** For each frame, whether the limb's sides are to be swapped: the cheapest way through the clip. */
function swapsOf(
  frames: readonly (Body | null)[],
  how: { readonly limb: readonly Part[]; readonly timesS: readonly number[]; readonly heightPx: number },
): readonly boolean[] {
  const seen = frames.flatMap((body, frame) => (body === null ? [] : [{ body, frame, atS: how.timesS[frame] ?? 0 }]));
  let costs: Costs = [0, frameCost];
  /** For each frame after the first and each state in it, whether the state before was another. */
  const changed: (readonly [boolean, boolean])[] = [];
  seen.forEach(({ body, atS }, i) => {
    const before = seen[i - 1];
    if (before === undefined) return;
    const { goesOn, changes } = travels(before.body, body, how);
    const isGap = atS - before.atS > longestGapS;
    const stay = isGap ? 0 : goesOn;
    const change = isGap ? 0 : changes;
    const [asSeen, other] = costs;
    changed.push([other + change < asSeen + stay, asSeen + change < other + stay]);
    costs = [Math.min(asSeen + stay, other + change), Math.min(other + stay, asSeen + change) + frameCost];
  });
  let state: 0 | 1 = costs[1] < costs[0] ? 1 : 0;
  const swaps = frames.map(() => false);
  for (let i = seen.length - 1; i >= 0; i -= 1) {
    const frame = seen[i]?.frame;
    if (frame !== undefined) swaps[frame] = state === 1;
    if (changed[i - 1]?.[state]) state = state === 1 ? 0 : 1;
  }
  return swaps;
}

/** How far the limb's joints went, both sides together, in body heights: with the sides as they are, and with them changed. */
function travels(
  from: Body,
  to: Body,
  { limb, heightPx }: { readonly limb: readonly Part[]; readonly heightPx: number },
) {
  let [straight, crossed] = [0, 0];
  for (const part of limb) {
    const ends = [from, to].flatMap((body) => [jointOf(body, part, 'left'), jointOf(body, part, 'right')]);
    const weight = Math.min(1, Math.min(...ends.map(({ confidence }) => confidence)) / sureConfidence);
    for (const side of ['left', 'right'] as const) {
      straight += weight * distancePx(jointOf(from, part, side), jointOf(to, part, side));
      crossed += weight * distancePx(jointOf(from, part, side), jointOf(to, part, otherSide(side)));
    }
  }
  return { goesOn: straight / heightPx, changes: crossed / heightPx + changeCost };
}
