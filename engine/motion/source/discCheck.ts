import type { CameraPath, Sighting } from '../../recording/recording.ts';
import { steadied } from '../camera/cameraPath.ts';
import type { BodyCandidate } from './bodyCandidate.ts';
import { correlationOf, deviationOf } from './statistics.ts';

/** What the lifter's body says of a disc. */
export type DiscVerdict =
  | { readonly kind: 'movesWith' }
  /** The body moves, the disc does not, or does something else, or is hidden while the body moves. */
  | { readonly kind: 'standsStill' | 'movesOtherwise' | 'seldomSeen' }
  /** The body stands still while the disc moves: it is somebody else's. */
  | { readonly kind: 'otherBody' }
  /** The body is seen too badly to say. */
  | { readonly kind: 'unknown' };

/** A body moves when it covers this many of its doubts, and this share of the lifter's height. */
const leastDoubts = 8;
const leastShareOfHeight = 0.05;
/** A body is seen well enough to speak of a disc in this share of the looks. */
const leastCoverage = 0.6;
/** Movements are compared over this long, so that a drift of either counts for nothing. */
const comparedOverS = 0.5;
const leastCompared = 12;
/** A disc that moves with the body does so this closely, and by no less and no more than so many times as far. */
const leastCorrelation = 0.7;
const shareOfWay = { least: 0.25, most: 4 } as const;
/** Parts of the body that rise and sink together do so this closely, noise and all. */
const alikeCorrelation = 0.85;
/** A disc is seen for this share of the body's way. */
const leastSeenOfWay = 0.75;

export type DiscSeen = { readonly frames: readonly (Sighting | null)[]; readonly camera: CameraPath | null };

/** Whether a disc moves with a part of the body. Both in pixels of the first frame. */
export function checkDisc(
  { frames, camera }: DiscSeen,
  body: BodyCandidate,
  { timesS, heightPx }: { readonly timesS: readonly number[]; readonly heightPx: number },
): DiscVerdict {
  if (body.coverage < leastCoverage) return { kind: 'unknown' };
  const disc = frames.map((sighting, frame) => sighting && -steadied(camera, frame, sighting).yPx);
  const pairs = waysOf(disc, body.heightsPx, timesS);
  const discWay = deviationOf(pairs.map(([own]) => own));
  const bodyWay = deviationOf(pairs.map(([, other]) => other));
  const moves = body.rangePx >= Math.max(leastDoubts * body.doubtPx, leastShareOfHeight * heightPx);
  if (!moves) {
    const isSteady = leastDoubts * body.doubtPx < leastShareOfHeight * heightPx;
    return { kind: isSteady && discWay * 2 > leastShareOfHeight * heightPx ? 'otherBody' : 'unknown' };
  }
  if (pairs.length < leastCompared || seenOfWay(disc, body.heightsPx) < leastSeenOfWay) return { kind: 'seldomSeen' };
  if (discWay < shareOfWay.least * bodyWay) return { kind: 'standsStill' };
  const movesWith = correlationOf(pairs) >= leastCorrelation && discWay <= shareOfWay.most * bodyWay;
  return { kind: movesWith ? 'movesWith' : 'movesOtherwise' };
}

/** Whether two parts of the body rise and sink together. */
export function movesAlike(one: BodyCandidate, other: BodyCandidate, timesS: readonly number[]): boolean {
  const pairs = waysOf(one.heightsPx, other.heightsPx, timesS);
  return pairs.length >= leastCompared && correlationOf(pairs) >= alikeCorrelation;
}

/** How far each goes within a while, wherever both are seen at its beginning and end. */
function waysOf(
  one: readonly (number | null)[],
  other: readonly (number | null)[],
  timesS: readonly number[],
): (readonly [number, number])[] {
  const pairs: (readonly [number, number])[] = [];
  let later = 0;
  timesS.forEach((atS, frame) => {
    while (later < timesS.length && (timesS[later] ?? 0) < atS + comparedOverS) later += 1;
    const [a, b, c, d] = [one[frame], one[later], other[frame], other[later]];
    if (a == null || b == null || c == null || d == null) return;
    pairs.push([b - a, d - c]);
  });
  return pairs;
}

/** The share of the body's way that was covered while the disc was seen. */
function seenOfWay(disc: readonly (number | null)[], body: readonly (number | null)[]): number {
  let [whole, seen] = [0, 0];
  body.forEach((height, frame) => {
    const before = body[frame - 1] ?? null;
    if (height === null || before === null) return;
    const way = Math.abs(height - before);
    whole += way;
    if (disc[frame] != null) seen += way;
  });
  return whole > 0 ? seen / whole : 1;
}
