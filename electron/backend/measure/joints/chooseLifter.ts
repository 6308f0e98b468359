import { boxOf, presenceOf, sizeOf } from '../../../../engine/motion/joints/bodyBox.ts';
import { between, jointOf } from '../../../../engine/motion/joints/points.ts';
import { quantile } from '../../../../engine/motion/signal/quantile.ts';
import type { Body, PointPx } from '../../../../engine/recording/recording.ts';
import { distanceTo } from './bodies.ts';
import type { PersonTrack, Place } from './personTracks.ts';
import type { Size } from './resample.ts';

/** What a whole clip tells of who lifts. */
export type LifterEvidence = {
  readonly picture: Size;
  /** How many pictures were searched for people. */
  readonly rounds: number;
  /** Where the bar was in a frame, as far as it is known. */
  readonly bar: (frame: number) => PointPx | null;
};

/** A joint counts when it is at least so sure. */
const leastConfidence = 0.2;
/** Up and down by so much of the body's size is a lift, whatever the exercise; more is no more of one. */
const wholeLift = 0.35;
/** What somebody who stands still is worth against somebody who lifts. */
const still = 0.15;
/** Joints of somebody who stands still wander by so much of the size. */
const wanders = 0.05;
/** Who was followed all the time is believed to be the lifter unless somebody else is likelier by so much. */
const credit = 0.5;
/** A bar at so many sizes from the body is not that person's. */
const barReach = 0.3;
/** Who goes with the bar does so to this correlation, whatever the moments at which both were seen. */
const leastTogetherness = 0.4;
/** What is taken for the bar may be something else, so that somebody away from it is still worth so much. */
const elsewhere = 0.3;
/** The bar tells who moves with it when it is known at so many of a person's places, and goes up and down by so many sizes. */
const knownBar = { places: 4, moves: 0.1 };

/**
 * The person who lifts: who goes up and down by a good part of their own size, with the bar where it is known, is seen through
 * the clip, large and clear. A picture on the wall, a mirror, a spotter and those who walk by do less of it. Null for no tracks.
 */
export function chooseLifter(tracks: readonly PersonTrack[], evidence: LifterEvidence): PersonTrack | null {
  let best: { readonly track: PersonTrack; readonly score: number } | null = null;
  for (const track of tracks) {
    const score = lifterScore(track, evidence);
    if (best === null || score > best.score) best = { track, score };
  }
  return best?.track ?? null;
}

/** How likely a person is the lifter, for comparison with others of the same clip; 0 at least. */
function lifterScore(track: PersonTrack, { picture, rounds, bar }: LifterEvidence): number {
  const seen = Math.min(1, track.length / Math.max(1, rounds));
  const presence = mean(track.map(({ body }) => presenceOf(body)));
  const size = mean(track.map(({ box }) => sizeOf(box))) / Math.max(picture.width, picture.height);
  const moves = still + Math.min(1, Math.max(0, liftInSizes(track) - wanders) / wholeLift);
  const followed = 1 + credit * (track.filter(({ isFollowed }) => isFollowed).length / track.length);
  return seen * presence * Math.sqrt(size) * moves * followed * barFactor(track, bar);
}

const parts = ['shoulder', 'hip', 'wrist'] as const;
type LiftingPart = (typeof parts)[number];

/** The picture's row of the middle of both joints of a kind; null when neither is sure. */
function rowOf(body: Body, part: LiftingPart): number | null {
  const sides = [jointOf(body, part, 'left'), jointOf(body, part, 'right')];
  const sure = sides.filter(({ confidence }) => confidence >= leastConfidence);
  const [one, other] = sure;
  if (one === undefined) return null;
  return other === undefined ? one.yPx : between(one, other).yPx;
}

const rowsOf = (track: PersonTrack, part: LiftingPart) =>
  track.flatMap((place) => {
    const row = rowOf(place.body, part);
    return row === null ? [] : [{ place, row }];
  });

/** Less than this, in sizes, is no lift: somebody who lies lifts hands by a quarter of their size. */
const leastLift = 0.12;

/** Whether somebody goes up and down as with a lift, and with the bar where one is known that does. */
export function lifts(track: PersonTrack, bar: LifterEvidence['bar']): boolean {
  const known = withBar(track, bar);
  const sizePx = mean(track.map(({ box }) => sizeOf(box)));
  const barMoves = known.length >= knownBar.places && spread(known.map(({ at }) => at.yPx)) >= knownBar.moves * sizePx;
  return liftInSizes(track) >= leastLift && (!barMoves || togetherness(known) >= leastTogetherness);
}

/**
 * How far shoulders, hips or hands go up and down, whichever most, in sizes of the body at its largest. Somebody who walks towards
 * the camera grows and shifts instead: what they shift across counts against it.
 */
function liftInSizes(track: PersonTrack): number {
  const sizePx = quantile(
    track.map(({ box }) => sizeOf(box)),
    0.9,
  );
  const lifts = parts.map((part) => spread(rowsOf(track, part).map(({ row }) => row)));
  const across = spread(track.map(({ box }) => (box.left + box.right) / 2)) / sizePx;
  return Math.max(...lifts) / sizePx / (1 + across);
}

/** From low to high, without the few most extreme. */
function spread(numbers: readonly number[]): number {
  return numbers.length < 3 ? 0 : quantile(numbers, 0.9) - quantile(numbers, 0.1);
}

/** 0.3-3: whether the bar is at the person, and goes up and down with them. */
function barFactor(track: PersonTrack, bar: LifterEvidence['bar']): number {
  const known = withBar(track, bar);
  if (known.length < knownBar.places) return 1;
  const near = mean(
    known.map(({ place, at }) => Math.exp(-distanceTo(place.box, at) / (barReach * sizeOf(place.box)))),
  );
  return (elsewhere + (1 - elsewhere) * near) * (1 + 2 * Math.max(0, togetherness(known)));
}

function withBar(track: PersonTrack, bar: LifterEvidence['bar']) {
  return track.flatMap((place) => {
    const at = bar(place.frame);
    return at === null ? [] : [{ place, at }];
  });
}

/** Correlation of the bar's height with that of the part that goes with it best; 0 when the bar keeps still. */
function togetherness(known: readonly { readonly place: Place; readonly at: PointPx }[]): number {
  const sizePx = mean(known.map(({ place }) => sizeOf(place.box)));
  if (spread(known.map(({ at }) => at.yPx)) < knownBar.moves * sizePx) return 0;
  return Math.max(
    ...parts.map((part) => {
      const pairs = known.flatMap(({ place, at }) => {
        const row = rowOf(place.body, part);
        return row === null ? [] : [[row, at.yPx] as const];
      });
      return pairs.length < knownBar.places ? 0 : correlation(pairs);
    }),
  );
}

function correlation(pairs: readonly (readonly [number, number])[]): number {
  const middle = [mean(pairs.map(([x]) => x)), mean(pairs.map(([, y]) => y))] as const;
  let [xy, xx, yy] = [0, 0, 0];
  for (const [x, y] of pairs) {
    xy += (x - middle[0]) * (y - middle[1]);
    xx += (x - middle[0]) ** 2;
    yy += (y - middle[1]) ** 2;
  }
  return xx * yy === 0 ? 0 : xy / Math.sqrt(xx * yy);
}

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, number) => sum + number, 0) / Math.max(1, numbers.length);

/** The track of whoever a person clicked in a frame: the nearest track whose box there holds the click; null when none does. */
export function trackAtClick(
  tracks: readonly PersonTrack[],
  { frame, at }: { readonly frame: number; readonly at: PointPx },
): PersonTrack | null {
  const there = tracks.flatMap((track) => {
    const place = track.find((one) => one.frame === frame);
    const box = place && boxOf(place.body);
    return box && distanceTo(box, at) === 0 ? [{ track, sizePx: sizeOf(box) }] : [];
  });
  // Of people one before the other, the smaller box is meant: the larger one could have been clicked elsewhere.
  there.sort((one, other) => one.sizePx - other.sizePx);
  return there[0]?.track ?? null;
}
