import { apartInSizes, type Box, boxOf, canBeSameBody } from '../../../../engine/motion/joints/bodyBox.ts';
import type { Body } from '../../../../engine/recording/recording.ts';

/** Everybody seen in one picture, among them whoever was followed there. */
export type Round = {
  readonly frame: number;
  readonly atS: number;
  readonly people: readonly Body[];
  readonly followed: Body | null;
};

/** A person at a moment. */
export type Place = {
  readonly frame: number;
  readonly atS: number;
  readonly body: Body;
  readonly box: Box;
  readonly isFollowed: boolean;
};

/** One person through the clip, in order of time, with gaps where they were not seen; never empty. */
export type PersonTrack = readonly Place[];

/** Somebody who was not seen for longer is a new person. */
const longestGapS = 3;
/** Joints may be so much further apart, in sizes, than the box alone would allow. */
const reachInASecond = 1.2;
const leastReach = 0.3;

/**
 * Joins people seen in picture after picture into tracks, the nearest first: by where their joints are, so that of two people in
 * one place the one who stands stays apart from the one who lies.
 *
 * @param rounds in order of time
 */
export function personTracks(rounds: readonly Round[]): readonly PersonTrack[] {
  const tracks: Place[][] = [];
  for (const { frame, atS, people, followed } of rounds) {
    const places = people.flatMap((body): Place[] => {
      const box = boxOf(body);
      return box === null ? [] : [{ frame, atS, body, box, isFollowed: body === followed }];
    });
    const pairs = tracks
      .flatMap((track) => {
        const last = track.at(-1);
        return last === undefined ? [] : places.map((place) => ({ track, place, apart: apart(last, place) }));
      })
      .filter((pair) => pair.apart < Number.POSITIVE_INFINITY)
      .sort((one, other) => one.apart - other.apart);
    const taken = new Set<Place>();
    for (const { track, place } of pairs) {
      if (taken.has(place) || track.at(-1)?.frame === frame) continue;
      track.push(place);
      taken.add(place);
    }
    for (const place of places) if (!taken.has(place)) tracks.push([place]);
  }
  return tracks;
}

/** How far apart two sightings are, in sizes a body's joints can go in between; endless when they can't be one person. */
function apart(before: Place, after: Place): number {
  const passedS = after.atS - before.atS;
  if (passedS > longestGapS || !canBeSameBody(before.body, after.body, passedS)) return Number.POSITIVE_INFINITY;
  const joints = apartInSizes(before.body, after.body);
  return joints > leastReach + reachInASecond * passedS ? Number.POSITIVE_INFINITY : joints;
}

/** A place on a track, between its sightings; how many seconds the nearest one is away. */
export type TrackPlace = { readonly box: Box; readonly body: Body; readonly passedS: number };

/** Where a person was at a moment: between two sightings on the way from one to the other, else at the nearest one. */
export function placeAt(track: PersonTrack, atS: number): TrackPlace | null {
  const after = track.find((place) => place.atS >= atS);
  const before = track.findLast((place) => place.atS <= atS);
  const nearest = nearer(before, after, atS);
  if (nearest === null) return null;
  const passedS = Math.abs(nearest.atS - atS);
  if (before === undefined || after === undefined || before === after) {
    return { box: nearest.box, body: nearest.body, passedS };
  }
  const share = (atS - before.atS) / (after.atS - before.atS);
  const between = (side: keyof Box) => before.box[side] + share * (after.box[side] - before.box[side]);
  const box = { left: between('left'), top: between('top'), right: between('right'), bottom: between('bottom') };
  return { box, body: nearest.body, passedS };
}

function nearer(before: Place | undefined, after: Place | undefined, atS: number): Place | null {
  if (before === undefined || after === undefined) return before ?? after ?? null;
  return atS - before.atS <= after.atS - atS ? before : after;
}
