import type { Body } from '../../recording/recording.ts';
import type { Facing } from './angles.ts';
import {
  type Bodies,
  between,
  distancePx,
  jointOf,
  median,
  otherSide,
  type Part,
  quantile,
  type Side,
} from './points.ts';

/** The confidence from which a joint counts as seen. */
export const leastConfidence = 0.2;

/**
 * Standing height over the sum of ear-shoulder, shoulder-hip, hip-knee and knee-ankle: of the height, shank and thigh are
 * 0.491 and the trunk 0.288 (Drillis & Contini 1966), the neck up to the ear 0.118, so that 0.897 is in the sum.
 */
const heightOverSegments = 1 / 0.897;

/**
 * The lifter's standing height in pixels, from the lengths of the segments, so that it holds in any posture; null when too
 * little is seen. Good to about 10 %.
 */
export function bodyHeightPx({ frames }: Bodies): number | null {
  const heights = frames.flatMap((body) => {
    const sides =
      body === null ? [] : [segmentsOf(body, 'left'), segmentsOf(body, 'right')].filter((px) => px !== null);
    return sides.length === 0 ? [] : [Math.max(...sides)];
  });
  // Segments that point at the camera look short, never long: the larger values are the true ones.
  return heights.length < 3 ? null : heightOverSegments * quantile(heights, 0.75);
}

function segmentsOf(body: Body, side: Side): number | null {
  const chain = (['shoulder', 'hip', 'knee', 'ankle'] as const).map((part) => jointOf(body, part, side));
  if (chain.some(({ confidence }) => confidence < leastConfidence)) return null;
  const ears = between(jointOf(body, 'ear', side), jointOf(body, 'ear', otherSide(side)));
  return [ears, ...chain].reduce((sum, place, i, all) => {
    const before = all[i - 1];
    return before === undefined ? 0 : sum + distancePx(before, place);
  }, 0);
}

/** Shoulders wider than this share of the trunk's length: filmed from the front, from behind or from half-way. */
const frontWidth = 0.45;
/** How far in front, in trunk lengths, nose and knees must be for a direction to be clear. */
const leastForward = 0.02;

/**
 * Which way the lifter faces in the picture: where the nose is from the ears, and to which side the knees bend. Null when
 * filmed from the front or from behind, or when too little is seen. A lifter who faces right shows the camera the right side.
 */
export function facingOf({ frames }: Bodies): Facing | null {
  const bodies = frames.filter((body) => body !== null);
  const seen = bodies.flatMap((body) => viewOf(body) ?? []);
  if (seen.length < 3 || median(seen.map(({ width }) => width)) > frontWidth) return null;
  const score = 2 * median(seen.map(({ nose }) => nose)) + median(seen.map(({ knee }) => knee));
  if (Math.abs(score) < leastForward) return null;
  return score > 0 ? 'right' : 'left';
}

/** In trunk lengths, + = to the picture's right. */
function viewOf(body: Body) {
  const left = (part: Part) => jointOf(body, part, 'left');
  const right = (part: Part) => jointOf(body, part, 'right');
  const middle = (part: Part) => between(left(part), right(part));
  const sure = (['shoulder', 'hip'] as const).every(
    (part) => Math.min(left(part).confidence, right(part).confidence) >= leastConfidence,
  );
  const trunk = distancePx(middle('shoulder'), middle('hip'));
  if (!sure || trunk < 1) return null;
  return {
    width: distancePx(left('shoulder'), right('shoulder')) / trunk,
    nose: (left('nose').xPx - middle('ear').xPx) / trunk,
    knee: (middle('knee').xPx - between(middle('hip'), middle('ankle')).xPx) / trunk,
  };
}
