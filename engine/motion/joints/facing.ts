import type { Body } from '../../recording/recording.ts';
import type { Facing } from './angles.ts';
import { leastConfidence } from './bodySize.ts';
import { type Bodies, jointOf, type Part } from './parts.ts';
import { between, distancePx, median } from './places.ts';

/** Shoulders wider than this share of the trunk's length: filmed from the front, from behind or from half-way. */
const frontWidth = 0.45;
/** Least way in front, in trunk lengths, for a direction to be told. */
const leastForward = 0.02;

/**
 * Which way the lifter faces in the picture: where the nose is from the ears, and to which side the knees bend. Null when
 * filmed from the front or from behind, or when too little is seen. Who faces right shows the right side to the camera.
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
