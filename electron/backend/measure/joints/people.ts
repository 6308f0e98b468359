import { apartInSizes, type Box, boxOf, presenceOf } from '../../../../engine/motion/joints/bodyBox.ts';
import type { Body } from '../../../../engine/recording/recording.ts';
import { bodyIn, type WayUp, wholePicture } from './bodies.ts';
import { networkPicture, type Picture } from './networkPicture.ts';
import { type Networks, sources } from './networks.ts';
import type { Crop, Size } from './resample.ts';

const { side } = sources.several;
const mostPeople = 6;
const numbersPerPerson = 56;

/** Somebody counts from this presence on: roughly seen people are looked at finely before anything follows from them. */
const leastPresence = 0.2;
/** Two bodies are one person seen twice when their joints lie so close together, in sizes, or less close in nearly the same box. */
const sameBody = { apart: 0.12, apartWithin: 0.25, overlap: 0.7 };

/** A smaller square would be enlarged for the network, which shows nothing more. */
const leastSidePx = 240;

/** How finely a picture is searched: the whole of it, also squares of it, also small squares. */
export type SearchDepth = 'whole' | 'squares' | 'smallSquares';

/**
 * People in a picture, the clearest first. The network shrinks what it is given to 320 pixels, in which a small person is gone: where
 * the whole picture shows nobody, its squares are searched, as deep as asked for, and the picture upside down.
 */
export async function peopleIn(networks: Networks, picture: Picture, depth: SearchDepth): Promise<readonly Body[]> {
  for (const squares of squaresOf(picture.size, depth)) {
    const found = await peopleInSquares(networks, picture, squares, 'upright');
    if (found.length > 0) return distinctPeople(found);
  }
  return depth === 'whole' ? [] : peopleInSquares(networks, picture, [wholePicture(picture.size)], 'upsideDown');
}

async function peopleInSquares(
  networks: Networks,
  picture: Picture,
  squares: readonly Crop[],
  wayUp: WayUp,
): Promise<Body[]> {
  const found: Body[] = [];
  for (const square of squares) found.push(...(await peopleInSquare(networks, picture, square, wayUp)));
  return found;
}

async function peopleInSquare(networks: Networks, picture: Picture, square: Crop, wayUp: WayUp): Promise<Body[]> {
  const numbers = await networks.several(networkPicture(picture, square, side, wayUp), side);
  return Array.from({ length: mostPeople }, (_, i) => bodyIn(numbers, square, wayUp, i * numbersPerPerson)).filter(
    (body) => presenceOf(body) >= leastPresence && boxOf(body) !== null,
  );
}

/** Each person once, as seen most clearly, the clearest first; before all of them those who are known already. */
export function distinctPeople(bodies: readonly Body[], known: readonly Body[] = []): readonly Body[] {
  const distinct: Body[] = [...known];
  for (const body of [...bodies].sort((one, other) => presenceOf(other) - presenceOf(one))) {
    if (!distinct.some((known) => areOne(known, body))) distinct.push(body);
  }
  return distinct;
}

function areOne(one: Body, other: Body): boolean {
  const apart = apartInSizes(one, other);
  return (
    apart < sameBody.apart || (apart < sameBody.apartWithin && overlap(boxOf(one), boxOf(other)) > sameBody.overlap)
  );
}

/** What two boxes share of the area they cover together. */
function overlap(one: Box | null, other: Box | null): number {
  if (one === null || other === null) return 0;
  const area = ({ left, top, right, bottom }: Box) => Math.max(0, right - left) * Math.max(0, bottom - top);
  const shared = area({
    left: Math.max(one.left, other.left),
    top: Math.max(one.top, other.top),
    right: Math.min(one.right, other.right),
    bottom: Math.min(one.bottom, other.bottom),
  });
  return shared / Math.max(1, area(one) + area(other) - shared);
}

/** The squares to search, level by level, the coarsest first; each level overlaps by half, so that nobody is cut by all. */
function squaresOf(size: Size, depth: SearchDepth): readonly (readonly Crop[])[] {
  const long = Math.max(size.width, size.height);
  const finer = { whole: [], squares: [2], smallSquares: [2, 4] }[depth].map((parts) => long / parts);
  return [
    [wholePicture(size)],
    ...finer.filter((sidePx) => sidePx >= leastSidePx).map((sidePx) => tiles(size, sidePx)),
  ];
}

function tiles({ width, height }: Size, sidePx: number): readonly Crop[] {
  const starts = (length: number): readonly number[] => {
    const steps = Math.max(0, Math.ceil((length - sidePx) / (sidePx / 2)));
    return Array.from({ length: steps + 1 }, (_, i) =>
      steps === 0 ? (length - sidePx) / 2 : (i * (length - sidePx)) / steps,
    );
  };
  return starts(height).flatMap((topPx) => starts(width).map((leftPx) => ({ leftPx, topPx, sidePx })));
}
