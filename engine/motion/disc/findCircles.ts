import type { PointPx } from '../../recording/recording.ts';
import { type GreyPicture, shrink } from '../picture/picture.ts';
import { type Earlier, type RimEdges, rimEdgesOf } from './rimEdges.ts';
import { type FoundRim, type Stance, voteRims } from './voteRims.ts';

/** Long side of the picture the search is done in: a disc is then 10-60 pixels across its radius. */
const searchLongSide = 320;

const round: Stance = { axisRatio: 1, majorAxisRad: 0 };

/**
 * How a disc on a level bar may stand: turned by up to 60°, upright but for what a camera that looks down, or is held
 * askew, makes of it.
 */
const oblique: readonly Stance[] = [
  upright(0.87, 0),
  ...[0.75, 0.63, 0.52].flatMap((axisRatio) => [-9, 0, 9].map((leanDeg) => upright(axisRatio, leanDeg))),
];

function upright(axisRatio: number, leanDeg: number): Stance {
  return { axisRatio, majorAxisRad: ((90 + leanDeg) * Math.PI) / 180 };
}

/** The picture as it is searched, made smaller by a factor. */
export type SearchPicture = { readonly small: GreyPicture; readonly factor: number };

/** A picture made small enough to be searched. */
export function searchPictureOf(picture: GreyPicture): SearchPicture {
  const factor = Math.max(1, Math.max(picture.width, picture.height) / searchLongSide);
  return { small: shrink(picture, factor), factor };
}

/** Finds circles by their rims (see `voteRims`); strongest first, none within another's middle. */
export function findCircles({ small, factor }: SearchPicture, most: number): FoundRim[] {
  return strongest(voteRims(small, rimEdgesOf(small), round), { most, factor });
}

/**
 * Finds rims at any turn up to 60°, by the edges alone that have moved against the background since an earlier picture.
 * Strongest first, none within another's middle.
 */
export function findMoving({ small, factor }: SearchPicture, earlier: Earlier, most: number): FoundRim[] {
  return strongest(rimsAtAnyTurn(small, rimEdgesOf(small, earlier)), { most, factor });
}

/** Finds rims at any turn up to 60° round a place: it lies within a share of their radius from their middle. */
export function findAround(
  { small, factor }: SearchPicture,
  { at, withinShare }: { readonly at: PointPx; readonly withinShare: number },
  most: number,
): FoundRim[] {
  const rims = rimsAtAnyTurn(small, rimEdgesOf(small)).filter(
    ({ xPx, yPx, radiusPx }) => Math.hypot(xPx - at.xPx / factor, yPx - at.yPx / factor) <= withinShare * radiusPx,
  );
  return strongest(rims, { most, factor });
}

const rimsAtAnyTurn = (small: GreyPicture, edges: RimEdges): FoundRim[] =>
  [round, ...oblique].flatMap((stance) => voteRims(small, edges, stance));

/** Finds rims that stand towards the camera as a disc does, anywhere; strongest first. */
export function findLike(
  { small, factor }: SearchPicture,
  { axisRatio, majorAxisRad }: Stance,
  most: number,
): FoundRim[] {
  return strongest(voteRims(small, rimEdgesOf(small), { axisRatio, majorAxisRad }), { most, factor });
}

function strongest(
  found: FoundRim[],
  { most, factor }: { readonly most: number; readonly factor: number },
): FoundRim[] {
  found.sort((one, other) => other.strength - one.strength);
  const kept: FoundRim[] = [];
  for (const rim of found) {
    if (kept.length >= most) break;
    if (!kept.some((other) => sameRim(rim, other))) kept.push(rim);
  }
  return kept.map((rim) => ({
    ...rim,
    xPx: rim.xPx * factor,
    yPx: rim.yPx * factor,
    radiusPx: rim.radiusPx * factor,
  }));
}

function sameRim(one: FoundRim, other: FoundRim): boolean {
  const apart = Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx);
  return (
    apart < 0.35 * Math.max(one.radiusPx, other.radiusPx) && Math.abs(Math.log(one.radiusPx / other.radiusPx)) < 0.25
  );
}
