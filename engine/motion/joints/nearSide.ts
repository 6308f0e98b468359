import type { Body, PointPx, Sighting } from '../../recording/recording.ts';
import type { Facing } from './angles.ts';
import { leastConfidence } from './lifter.ts';
import { type Bodies, distancePx, forParts, jointOf, otherSide, type Part } from './points.ts';
import type { Swapped } from './swappedSides.ts';

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
