import type { Body, PointPx, Sighting } from '../../recording/recording.ts';
import type { Facing } from './angles.ts';
import { leastConfidence } from './lifter.ts';
import { type Bodies, distancePx, forParts, jointOf, otherSide, type Part } from './points.ts';

/** Joints that swap sides together when the network takes one limb for the other. */
const limbs: readonly (readonly Part[])[] = [['hip', 'knee', 'ankle'], ['shoulder', 'elbow', 'wrist'], ['ear']];
/** Swapping sides must shorten the limb's travel since the last frame to this share, and by this much of the body's height. */
const shorter = { share: 0.6, ofHeight: 0.04 };

/** For a frame and a joint, whether the network called left right there. */
export type Swapped = (frame: number, part: Part) => boolean;

/**
 * Finds where the network takes left for right: where a limb continues from the frames before with its sides swapped, but
 * not as it is. What most frames call left is left.
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
      const straight = travelPx(last, body, limb, 'straight');
      const crossed = travelPx(last, body, limb, 'crossed');
      const gainPx = straight - crossed;
      if (crossed < shorter.share * straight && gainPx > shorter.ofHeight * heightPx) swapped = !swapped;
    }
    last = body;
    return swapped;
  });
}

/** How far the limb's joints went from one body to the next, both sides together. */
function travelPx(from: Body, to: Body, limb: readonly Part[], sides: 'straight' | 'crossed'): number {
  return limb.reduce((sum, part) => {
    const travels = (['left', 'right'] as const).map((side) =>
      distancePx(jointOf(from, part, side), jointOf(to, part, sides === 'straight' ? side : otherSide(side))),
    );
    return sum + travels.reduce((all, travel) => all + travel, 0);
  }, 0);
}

/** The disc that stands between camera and lifter: where it is in each frame, and how large. */
export type DiscInFront = { readonly frames: readonly (PointPx | null)[]; readonly radiusPx: number };
export type PictureSize = { readonly width: number; readonly height: number };

/** Whether a joint is seen in a frame, or why not. */
export type Visibility = 'seen' | 'behindDisc' | 'outOfFrame' | 'unclear';
export type SeenJoint = { readonly point: Sighting; readonly visibility: Visibility };

export type NearSide = Readonly<Record<Part, readonly (SeenJoint | null)[]>>;

/** A joint so near to the picture's edge, in shares of its long side, may as well be beyond it. */
const edge = 0.01;

/** A head behind something that the recording knows nothing of gets a middling confidence; it does not count as seen. */
const leastOfHead = 0.45;
const leastOf = (part: Part): number => (part === 'nose' || part === 'ear' ? leastOfHead : leastConfidence);

/** The joints of the side that faces the camera, frame by frame, each with whether it can be seen; null where nobody was looked for. */
export function nearJoints(
  { frames }: Bodies,
  near: {
    readonly side: Facing;
    readonly swapped: Swapped;
    readonly disc: DiscInFront | null;
    readonly picture: PictureSize;
  },
): NearSide {
  return forParts((part) =>
    frames.map((body, frame): SeenJoint | null => {
      if (body === null) return null;
      const point = nearJoint(body, part, near.swapped(frame, part) ? otherSide(near.side) : near.side);
      return { point, visibility: visibilityOf(part, point, frame, near) };
    }),
  );
}

/** Both ears stand for one: from the side they lie behind each other, and together they are steadier. */
function nearJoint(body: Body, part: Part, side: Facing): Sighting {
  const near = jointOf(body, part, side);
  if (part !== 'ear') return near;
  const far = jointOf(body, part, otherSide(side));
  const sum = near.confidence + far.confidence || 1;
  return {
    xPx: (near.xPx * near.confidence + far.xPx * far.confidence) / sum,
    yPx: (near.yPx * near.confidence + far.yPx * far.confidence) / sum,
    confidence: Math.max(near.confidence, far.confidence),
  };
}

function visibilityOf(
  part: Part,
  point: Sighting,
  frame: number,
  { disc, picture }: { readonly disc: DiscInFront | null; readonly picture: PictureSize },
): Visibility {
  const centre = disc?.frames[frame] ?? null;
  if (disc !== null && centre !== null && distancePx(point, centre) < disc.radiusPx) return 'behindDisc';
  const marginPx = edge * Math.max(picture.width, picture.height);
  const inside =
    point.xPx > marginPx &&
    point.yPx > marginPx &&
    point.xPx < picture.width - marginPx &&
    point.yPx < picture.height - marginPx;
  if (!inside) return 'outOfFrame';
  return point.confidence >= leastOf(part) ? 'seen' : 'unclear';
}
