import type { Body, PointPx } from '../../recording/recording.ts';
import { type Bodies, between, distancePx, jointOf, type Part, type Side } from '../joints/points.ts';
import { quantile } from '../signal/quantile.ts';

/**
 * From ankle to ear of the standing height: the eyes are 0.936 and the ankles 0.039 of it above the floor (Drillis & Contini
 * 1966), and the ears are level with the eyes.
 */
const ankleToEar = 0.897;
/** Standing height of an adult whose height is not known, and the half-width that nine in ten of both sexes lie within. */
export const usualHeight = { metres: 1.7, relativeUncertainty: 0.1 } as const;
/** How far joints, shoes and a body that stands not quite upright put its height in pixels off. */
export const heightReading = 0.07;

/** A joint counts towards the height from this confidence on. */
const leastConfidence = 0.3;
/** Trunk and legs of a standing body lean no further than this share of their height; a straight leg reaches so much of its length down. */
const mostLean = 0.45;
const leastStraight = 0.94;
/** The body stands at some time in at least so many looks. */
const leastLooks = 4;
/** Standing straight is what the tallest of the upright looks show, but for a few mistakes. */
const tallShare = 0.8;

/**
 * The lifter's standing height in pixels from looks that show the whole body upright; null when there are too few, as of
 * somebody who lies, sits or is cut off at the feet.
 */
export function standingHeightPx({ frames }: Bodies): number | null {
  const heights = frames.flatMap((body) => (body === null ? [] : (uprightHeightPx(body) ?? [])));
  return heights.length < leastLooks ? null : quantile(heights, tallShare) / ankleToEar;
}

/** From ankles to ears of one look; null unless the whole body is seen upright on straight legs. */
function uprightHeightPx(body: Body): number | null {
  const [ear, shoulder, hip, ankle] = (['ear', 'shoulder', 'hip', 'ankle'] as const).map((part) =>
    middleOf(body, part),
  );
  if (!ear || !shoulder || !hip || !ankle) return null;
  const upright = [
    [shoulder, hip],
    [hip, ankle],
  ] as const;
  const isUpright =
    ear.yPx < shoulder.yPx &&
    upright.every(([upper, lower]) => Math.abs(lower.xPx - upper.xPx) <= mostLean * (lower.yPx - upper.yPx));
  const legs = (['left', 'right'] as const).flatMap((side) => straightness(body, side) ?? []);
  return isUpright && legs.length > 0 && legs.every((share) => share >= leastStraight) ? ankle.yPx - ear.yPx : null;
}

/** How far down a leg reaches, as a share of the length of thigh and shank; null where it is not seen. */
function straightness(body: Body, side: Side): number | null {
  const [hip, knee, ankle] = (['hip', 'knee', 'ankle'] as const).map((part) => jointOf(body, part, side));
  if (!hip || !knee || !ankle || [hip, knee, ankle].some(({ confidence }) => confidence < leastConfidence)) return null;
  return (ankle.yPx - hip.yPx) / Math.max(1, distancePx(hip, knee) + distancePx(knee, ankle));
}

/** The middle of both sides' joints, or the one that is seen; null when neither is. */
function middleOf(body: Body, part: Part): PointPx | null {
  const [one, other] = [jointOf(body, part, 'left'), jointOf(body, part, 'right')].filter(
    ({ confidence }) => confidence >= leastConfidence,
  );
  if (one === undefined) return null;
  return other === undefined ? one : between(one, other);
}
