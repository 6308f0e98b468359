import type { GreyPicture } from '../../../../engine/motion/picture/picture.ts';
import { drawn, type Size, wallAt } from '../disc/drawDisc.ts';

/** How the background lies in a picture against the first: turned and scaled about the middle, then shifted. */
export type Pose = {
  readonly rightPx: number;
  readonly downPx: number;
  readonly turnDeg: number;
  readonly scale: number;
};

type Point = { readonly xPx: number; readonly yPx: number };

/** Where a place of the first picture lies in one of another pose. */
export function posed({ width, height }: Size, pose: Pose, { xPx, yPx }: Point): Point {
  const turn = (pose.turnDeg * Math.PI) / 180;
  const across = (xPx - width / 2) * pose.scale;
  const down = (yPx - height / 2) * pose.scale;
  return {
    xPx: width / 2 + pose.rightPx + across * Math.cos(turn) - down * Math.sin(turn),
    yPx: height / 2 + pose.downPx + across * Math.sin(turn) + down * Math.cos(turn),
  };
}

/** And the way back. */
function unposed({ width, height }: Size, pose: Pose, { xPx, yPx }: Point): Point {
  const turn = (pose.turnDeg * Math.PI) / 180;
  const across = (xPx - width / 2 - pose.rightPx) / pose.scale;
  const down = (yPx - height / 2 - pose.downPx) / pose.scale;
  return {
    xPx: width / 2 + across * Math.cos(turn) + down * Math.sin(turn),
    yPx: height / 2 - across * Math.sin(turn) + down * Math.cos(turn),
  };
}

/** A wall with more contrast than usual: posters, racks, bricks. */
export const busyWallAt = (xPx: number, yPx: number, seed = 3): number => 128 + 2 * (wallAt(xPx, yPx, seed) - 135);

/** The busy wall from a camera in a pose. */
export const busyWall = (size: Size, pose: Pose): GreyPicture =>
  drawn(size, (xPx, yPx) => {
    const at = unposed(size, pose, { xPx, yPx });
    return busyWallAt(at.xPx, at.yPx);
  });

export const atRest: Pose = { rightPx: 0, downPx: 0, turnDeg: 0, scale: 1 };

/** Dark posts 18 px wide on a light wall, each through a column at half the height, leaning with their tops to the right. */
export const postRoom = (
  { width, height }: Size,
  posts: readonly { readonly xPx: number; readonly leanDeg: number }[],
): GreyPicture =>
  drawn({ width, height }, (xPx, yPx) => {
    const darkest = posts.map(({ xPx: middlePx, leanDeg }) => {
      const axisPx = middlePx - (yPx - height / 2) * Math.tan((leanDeg * Math.PI) / 180);
      return Math.min(1, Math.max(0, 9.5 - Math.abs(xPx - axisPx)));
    });
    return 170 - 90 * Math.max(0, ...darkest);
  });
