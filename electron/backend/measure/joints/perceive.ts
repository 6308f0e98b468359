import type { Body, PointPx } from '../../../../engine/recording/recording.ts';
import {
  bodyIn,
  boxOf,
  canBeSame,
  cropRound,
  distanceTo,
  isThere,
  presenceOf,
  sizeOf,
  wholePicture,
} from './bodies.ts';
import { type Networks, sources } from './networks.ts';
import { type Crop, colourCrop, type Size } from './resample.ts';

const oneSide = sources.one.side;
const severalSide = sources.several.side;
const mostPeople = 6;
const numbersPerPerson = 56;

export type Look = {
  /** Planar 4:2:0: the grey plane, then the two colour differences. */
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly size: Size;
  /** The lifter as seen a moment ago. */
  readonly last: Body | null;
  /** Where the bar is, which the lifter is at. */
  readonly near: PointPx | null;
  /** Looks over the whole picture, although the lifter was seen a moment ago. */
  readonly anew: boolean;
};

/** Finds the lifter's joints, first where they were a moment ago, else anywhere in the picture; null when nobody is seen. */
export async function perceive(networks: Networks, look: Look): Promise<Body | null> {
  const lastBox = look.last === null ? null : boxOf(look.last);
  if (!look.anew && look.last !== null && lastBox !== null) {
    const body = await bodyAt(networks, look, cropRound(lastBox));
    if (isThere(body) && canBeSame(look.last, body)) return body;
  }
  return findLifter(networks, look);
}

async function bodyAt(networks: Networks, { bytes, size }: Look, crop: Crop): Promise<Body> {
  return bodyIn(await networks.one(colourCrop(bytes, size, crop, oneSide), oneSide), crop);
}

/** Looks over the whole picture for people, takes the likeliest to be the lifter, and looks at that one finely. */
async function findLifter(networks: Networks, look: Look): Promise<Body | null> {
  const whole = wholePicture(look.size);
  const crops = (await peopleIn(networks, look, whole)).flatMap((body) => {
    const box = boxOf(body);
    return box === null ? [] : [cropRound(box)];
  });
  for (const crop of [...crops.slice(0, 2), whole]) {
    const body = await bodyAt(networks, look, crop);
    const box = boxOf(body);
    if (!isThere(body) || box === null) continue;
    const finer = await bodyAt(networks, look, cropRound(box));
    return isThere(finer) ? finer : body;
  }
  return null;
}

/** People in the picture, the likeliest to be the lifter first: who was the lifter a moment ago, is at the bar, is large and clear. */
async function peopleIn(networks: Networks, { bytes, size, last, near }: Look, whole: Crop): Promise<readonly Body[]> {
  const numbers = await networks.several(colourCrop(bytes, size, whole, severalSide), severalSide);
  const likelihood = (body: Body): number => {
    const box = boxOf(body);
    if (box === null) return 0;
    const clear = presenceOf(body) * (sizeOf(box) / whole.sidePx);
    const atBar = near === null ? 1 : Math.exp(-distanceTo(box, near) / (0.3 * sizeOf(box)));
    const same = last !== null && canBeSame(last, body) ? 3 : 1;
    return clear * atBar * same;
  };
  return Array.from({ length: mostPeople }, (_, i) => bodyIn(numbers, whole, i * numbersPerPerson))
    .map((body) => ({ body, likelihood: likelihood(body) }))
    .filter((one) => one.likelihood > 0.02)
    .sort((a, b) => b.likelihood - a.likelihood)
    .map(({ body }) => body);
}
