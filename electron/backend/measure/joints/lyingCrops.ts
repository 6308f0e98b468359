import { boxOf, presenceOf } from '../../../../engine/motion/joints/bodyBox.ts';
import { between, jointOf } from '../../../../engine/motion/joints/points.ts';
import type { Body, PointPx } from '../../../../engine/recording/recording.ts';
import { bodyIn, isThere } from './bodies.ts';
import { networkPicture, type Picture } from './networkPicture.ts';
import { type Networks, sources } from './networks.ts';
import type { Crop, Size } from './resample.ts';

/*
 * Somebody who lies among people who stand is not found by searching for people: those who stand hide them. What finds them
 * is to look at upright crops of several sizes round the bar and to keep the clearest body whose trunk lies: they lie where
 * they are, so that a few crops chosen once do for the whole clip.
 */

/** Sides of the crops in shares of the picture's long side, and how far their middles lie from the bar, in sides. */
const sidesTried = [0.3, 0.45, 0.7, 1];
const acrossTried = [-0.3, 0, 0.3];
const downTried = [0, 0.2];

/** The crops to try round the place where something is lifted. */
export function cropsToTry({ xPx, yPx }: PointPx, { width, height }: Size): readonly Crop[] {
  return sidesTried.flatMap((share) => {
    const sidePx = share * Math.max(width, height);
    return acrossTried.flatMap((across) =>
      downTried.map((down) => ({
        leftPx: xPx + (across - 0.5) * sidePx,
        topPx: yPx + (down - 0.5) * sidePx,
        sidePx,
      })),
    );
  });
}

/** So many crops are kept; each must have shown somebody who lies in at least this share of the pictures tried. */
const mostKept = 4;
const leastShown = 0.5;

/**
 * The crops that show somebody who lies most clearly, the best first; none when no crop shows one in half of the pictures.
 *
 * @param tried for each picture, what each crop showed
 */
export function bestCrops(crops: readonly Crop[], tried: readonly (readonly (Body | null)[])[]): readonly Crop[] {
  return crops
    .map((crop, i) => {
      const shown = tried.map((bodies) => bodies[i] ?? null).filter((body) => body !== null);
      const presence = shown.reduce((sum, body) => sum + presenceOf(body), 0);
      return { crop, presence, isShown: shown.length >= leastShown * tried.length };
    })
    .filter(({ isShown }) => isShown)
    .sort((one, other) => other.presence - one.presence)
    .slice(0, mostKept)
    .map(({ crop }) => crop);
}

/** Crops to look through: `all` of them, or up to the first that shows somebody who lies clearly. */
export type LyingCrops = { readonly crops: readonly Crop[]; readonly until: 'all' | 'clear' };

const clear = 0.5;
const { side } = sources.one;

/** Who lies in each crop of a picture; null where nobody does, or where it was not looked any more. */
export async function lyingIn(
  networks: Networks,
  picture: Picture,
  { crops, until }: LyingCrops,
): Promise<readonly (Body | null)[]> {
  const found: (Body | null)[] = crops.map(() => null);
  for (const [i, crop] of crops.entries()) {
    const body = bodyIn(await networks.one(networkPicture(picture, crop, side, 'upright'), side), crop);
    if (!isThere(body) || !lies(body)) continue;
    found[i] = body;
    if (until === 'clear' && presenceOf(body) >= clear) break;
  }
  return found;
}

/** The clearest of the bodies; null for none. */
export function clearest(bodies: readonly (Body | null)[]): Body | null {
  let best: Body | null = null;
  for (const body of bodies) {
    if (body !== null && (best === null || presenceOf(body) > presenceOf(best))) best = body;
  }
  return best;
}

const leastConfidence = 0.2;

/** Whether the trunk is nearer to level than to upright. */
function lies(body: Body): boolean {
  const [shoulders, hips] = (['shoulder', 'hip'] as const).map((part) => {
    const [left, right] = [jointOf(body, part, 'left'), jointOf(body, part, 'right')];
    return Math.max(left.confidence, right.confidence) < leastConfidence ? null : between(left, right);
  });
  if (!shoulders || !hips || boxOf(body) === null) return false;
  return Math.abs(shoulders.xPx - hips.xPx) > Math.abs(shoulders.yPx - hips.yPx);
}
