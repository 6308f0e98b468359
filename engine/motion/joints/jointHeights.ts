import { bodyHeightPx, leastConfidence } from './lifter.ts';
import { type Bodies, jointOf, type Part } from './points.ts';
import { type Sample, smoothPoints, withoutJumps } from './smoothPoints.ts';

/** What goes up and down with a rep where there is no disc. */
export type HeightOf = 'hip' | 'shoulder' | 'head' | 'wrist';

const jointsOf: Readonly<Record<HeightOf, readonly Part[]>> = {
  hip: ['hip'],
  shoulder: ['shoulder'],
  head: ['ear', 'nose'],
  wrist: ['wrist'],
};
const leastJump = 0.08;

/**
 * Height of a part of the body through a clip, in pixels above the picture's bottom edge, smoothed, from both sides together.
 * Null where it was not seen for too long.
 */
export function jointHeights(
  { frames }: Bodies,
  {
    of,
    timesS,
    pictureHeightPx,
  }: { readonly of: HeightOf; readonly timesS: readonly number[]; readonly pictureHeightPx: number },
): readonly (number | null)[] {
  const samples = frames.flatMap((body, frame): readonly Sample[] => {
    const atS = timesS[frame];
    if (body === null || atS === undefined) return [];
    const seen = jointsOf[of]
      .flatMap((part) => [jointOf(body, part, 'left'), jointOf(body, part, 'right')])
      .filter(({ confidence }) => confidence >= leastConfidence);
    const sum = seen.reduce((all, { confidence }) => all + confidence, 0);
    if (sum === 0) return [];
    const mean = (axis: 'xPx' | 'yPx') => seen.reduce((all, one) => all + one.confidence * one[axis], 0) / sum;
    return [{ xPx: mean('xPx'), yPx: mean('yPx'), atS }];
  });
  const leastJumpPx = leastJump * (bodyHeightPx({ frames }) ?? pictureHeightPx);
  return smoothPoints(withoutJumps(samples, leastJumpPx), timesS).map((point) =>
    point === null ? null : pictureHeightPx - point.yPx,
  );
}
