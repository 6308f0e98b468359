import {
  type Box,
  boxOf,
  canBeSame,
  canBeSameBody,
  presenceOf,
  sizeOf,
} from '../../../../engine/motion/joints/bodyBox.ts';
import type { Body, PointPx } from '../../../../engine/recording/recording.ts';
import { bodyIn, cropRound, distanceTo, fitsCrop, isThere, type WayUp, wayUpOf, wholePicture } from './bodies.ts';
import { clearest, type LyingCrops, lyingIn } from './lyingCrops.ts';
import { networkPicture, type Picture } from './networkPicture.ts';
import { type Networks, sources } from './networks.ts';
import { distinctPeople, peopleIn, type SearchDepth } from './people.ts';
import type { Crop, Size } from './resample.ts';

const { side } = sources.one;

/** The lifter as seen so many seconds ago, where they are expected, and which way up. */
export type Guide = { readonly body: Body; readonly box: Box; readonly passedS: number; readonly wayUp: WayUp };

export type Look = Picture & {
  readonly guide: Guide | null;
  /** Where the bar is, which the lifter is at. */
  readonly near: PointPx | null;
  /** How to search the picture when the guide leads to nobody; null = not at all. */
  readonly search: SearchDepth | null;
  /** Where a person clicked the lifter in this very picture. */
  readonly clicked: PointPx | null;
  /** Whether to look for everybody else in the picture as well. */
  readonly who: 'lifter' | 'everybody';
  /** To look through these crops for somebody who lies, and at nothing else; null = not so. */
  readonly crops: LyingCrops | null;
};

/** What a look shows: the lifter as far as is known then, and everybody where that was asked for, the lifter among them. */
export type Seen = {
  readonly lifter: Body | null;
  readonly people: readonly Body[];
  /** Who lies in each of the crops that were asked for. */
  readonly lying: readonly (Body | null)[];
};

/** Looks at a picture for the lifter, and for everybody where that is asked for. */
export async function perceive(networks: Networks, look: Look): Promise<Seen> {
  if (look.crops !== null) {
    const lying = await lyingIn(networks, look, look.crops);
    return { lifter: clearest(lying), people: [], lying };
  }
  const lifter = await lifterIn(networks, look);
  // Where nobody was found by searching, another search finds nobody either.
  if (look.who === 'lifter' || (lifter === null && look.search !== null)) return { lifter, people: [], lying: [] };
  const others = await peopleIn(networks, look, lifter === null ? 'squares' : 'whole');
  return { lifter, people: distinctPeople(others, lifter === null ? [] : [lifter]), lying: [] };
}

/**
 * Finds the lifter's joints: at the click if there is one, else where they were a moment ago, else anywhere in the picture.
 * Null when nobody is seen.
 */
async function lifterIn(networks: Networks, look: Look): Promise<Body | null> {
  if (look.clicked !== null) {
    const body = await bodyAtClick(networks, look, look.clicked);
    if (body !== null) return body;
  }
  if (look.guide !== null) {
    const body = await followed(networks, look, look.guide);
    if (body !== null) return body;
  }
  return look.search === null ? null : findLifter(networks, look, look.search);
}

async function bodyAt(networks: Networks, picture: Picture, crop: Crop, wayUp: WayUp): Promise<Body> {
  return bodyIn(await networks.one(networkPicture(picture, crop, side, wayUp), side), crop, wayUp);
}

/** The lifter where the guide says; a second look follows when they have moved out of the crop's middle. */
async function followed(networks: Networks, picture: Picture, guide: Guide): Promise<Body | null> {
  const { box, passedS, wayUp } = guide;
  const crop = cropRound(box, passedS);
  const body = await bodyAt(networks, picture, crop, wayUp);
  const found = boxOf(body);
  if (!isThere(body) || found === null || !isGuided(guide, body, found)) return null;
  return fitsCrop(found, crop, picture.size) ? body : closer(networks, picture, { body, box: found, wayUp });
}

const isGuided = ({ box, body: last, passedS }: Guide, body: Body, found: Box): boolean =>
  canBeSame(box, found, passedS) || canBeSameBody(last, body, passedS);

/** A look at the body from its own crop, if that shows the same body as clearly. */
async function closer(
  networks: Networks,
  picture: Picture,
  { body, box, wayUp }: { readonly body: Body; readonly box: Box; readonly wayUp: WayUp },
): Promise<Body> {
  const again = await bodyAt(networks, picture, cropRound(box), wayUp);
  const boxAgain = boxOf(again);
  const isBetter = boxAgain !== null && canBeSame(box, boxAgain, 0) && presenceOf(again) >= 0.9 * presenceOf(body);
  return isBetter ? again : body;
}

/** Looks over the picture for people, takes the likeliest to be the lifter, and looks at that one finely. */
async function findLifter(networks: Networks, look: Look, depth: SearchDepth): Promise<Body | null> {
  const people = await peopleIn(networks, look, depth);
  const likeliest = people
    .map((body) => ({ body, likelihood: likelihoodOf(body, look) }))
    .sort((one, other) => other.likelihood - one.likelihood)
    .slice(0, 2);
  const crops = likeliest.flatMap(({ body }) => {
    const box = boxOf(body);
    return box === null ? [] : [{ crop: cropRound(box), wayUp: wayUpOf(body) }];
  });
  for (const { crop, wayUp } of [...crops, { crop: wholePicture(look.size), wayUp: 'upright' as const }]) {
    const body = await bodyAt(networks, look, crop, wayUp);
    const box = boxOf(body);
    if (isThere(body) && box !== null)
      return rightWayUp(networks, look, await closer(networks, look, { body, box, wayUp }));
  }
  return null;
}

/** Turned over, somebody on their hands must be clearer by so much, as the network sees most of them the wrong way up as well. */
const clearer = 0.1;

/** The body, or that of somebody on their hands whom the network took for one who stands. */
async function rightWayUp(networks: Networks, picture: Picture, body: Body): Promise<Body> {
  const box = boxOf(body);
  if (box === null || wayUpOf(body) === 'upsideDown') return body;
  const over = await bodyAt(networks, picture, cropRound(box), 'upsideDown');
  const isOver = wayUpOf(over) === 'upsideDown' && presenceOf(over) > presenceOf(body) + clearer;
  return isOver ? over : body;
}

/** The likeliest to be the lifter is at the bar, and large and clear. */
function likelihoodOf(body: Body, { size, near, guide }: Look): number {
  const box = boxOf(body);
  if (box === null) return 0;
  const clear = presenceOf(body) * Math.sqrt(sizeOf(box) / Math.max(size.width, size.height));
  const atBar = near === null ? 1 : Math.exp(-distanceTo(box, near) / (0.3 * sizeOf(box)));
  const same = guide !== null && isGuided(guide, body, box) ? 3 : 1;
  return clear * atBar * same;
}

/** Sides of the crops round a click, in shares of the picture's long side: the person there may be small or fill the picture. */
const clickCrops = [0.12, 0.2, 0.33, 0.55, 0.9];

/** The clearest person round a click, by crops of many sizes; null when nobody is there. */
async function bodyAtClick(networks: Networks, look: Look, clicked: PointPx): Promise<Body | null> {
  let best: Body | null = null;
  for (const crop of cropsRound(clicked, look.size)) {
    const body = await bodyAt(networks, look, crop, 'upright');
    const box = boxOf(body);
    if (!isThere(body) || box === null || distanceTo(box, clicked) > 0) continue;
    if (best === null || presenceOf(body) > presenceOf(best)) best = body;
  }
  const box = best && boxOf(best);
  return best && box && closer(networks, look, { body: best, box, wayUp: 'upright' });
}

function cropsRound({ xPx, yPx }: PointPx, { width, height }: Size): readonly Crop[] {
  return clickCrops.map((share) => {
    const sidePx = share * Math.max(width, height);
    return { leftPx: xPx - sidePx / 2, topPx: yPx - sidePx / 2, sidePx };
  });
}
