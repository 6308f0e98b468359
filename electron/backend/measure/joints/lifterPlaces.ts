import { boxOf, canBeSame, canBeSameBody } from '../../../../engine/motion/joints/bodyBox.ts';
import type { Body, PointPx } from '../../../../engine/recording/recording.ts';
import { chooseLifter, type LifterEvidence, lifts, trackAtClick } from './chooseLifter.ts';
import { type PersonTrack, personTracks, placeAt, type Round, type TrackPlace } from './personTracks.ts';

/** A click on the lifter, at a frame that was looked at. */
export type LifterClick = { readonly frame: number; readonly atS: number; readonly at: PointPx };

/** Who lifts, over the whole clip. */
export type LifterPlaces = {
  /** Where the lifter was at a moment; null where nothing tells. */
  readonly at: (atS: number) => TrackPlace | null;
  /** Whether a body seen at a moment is somebody else. */
  readonly isOther: (body: Body, atS: number) => boolean;
  /** Whether anybody who was seen lifts; a click says so too. */
  readonly isFound: boolean;
  /** Clicks at which nobody is. */
  readonly inVain: readonly LifterClick[];
};

/** Somebody who was not seen for longer can be anywhere, unless a click says that it is the lifter. */
const knownForS = 3;
/** A place is taken for no older than this: people lift where they stand. */
const mostPassedS = 0.5;

/** Puts together who lifts, from everybody who was seen and the clicks of a person, which win. */
export function lifterPlaces(
  rounds: readonly Round[],
  clicks: readonly LifterClick[],
  evidence: LifterEvidence,
): LifterPlaces {
  const tracks = personTracks(rounds);
  const clicked = clicks.map((click) => ({ click, track: trackAtClick(tracks, click) }));
  const known = clicked.flatMap(({ click, track }) => (track === null ? [] : [{ click, track }]));
  const chosen = chooseLifter(tracks, evidence);
  const lifterAt = (atS: number): PersonTrack | null => nearestClick(known, atS)?.track ?? chosen;
  const at = (atS: number): TrackPlace | null => {
    const track = lifterAt(atS);
    const place = track && placeAt(track, atS);
    if (!place || (known.length === 0 && place.passedS > knownForS)) return null;
    return place;
  };
  return {
    at,
    isFound: known.length > 0 || (chosen !== null && lifts(chosen, evidence.bar)),
    isOther: (body, atS) => {
      const place = at(atS);
      if (place === null || isAt(place, body)) return false;
      const lifter = lifterAt(atS);
      return known.length > 0 || tracks.some((track) => track !== lifter && isAt(placeAt(track, atS), body));
    },
    inVain: clicked.flatMap(({ click, track }) => (track === null ? [click] : [])),
  };
}

function nearestClick<T extends { readonly click: LifterClick }>(clicked: readonly T[], atS: number): T | undefined {
  return [...clicked].sort((one, other) => Math.abs(one.click.atS - atS) - Math.abs(other.click.atS - atS))[0];
}

function isAt(place: TrackPlace | null, body: Body): boolean {
  const box = boxOf(body);
  if (place === null || box === null) return false;
  const passedS = Math.min(mostPassedS, place.passedS);
  return canBeSame(place.box, box, passedS) || canBeSameBody(place.body, body, passedS);
}
