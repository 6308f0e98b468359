import { boxOf } from '../../../../engine/motion/joints/bodyBox.ts';
import type { Body, PointPx } from '../../../../engine/recording/recording.ts';
import { type LifterEvidence, lifts } from './chooseLifter.ts';
import { type LifterClick, type LifterPlaces, lifterPlaces } from './lifterPlaces.ts';
import { bestCrops, cropsToTry } from './lyingCrops.ts';
import type { PersonTrack, Round } from './personTracks.ts';
import type { Crop } from './resample.ts';

/** What is done with the pictures of a clip, which may be given more than once. */
export type Stage =
  | { readonly kind: 'following' }
  | Trying
  | { readonly kind: 'lying'; readonly crops: readonly Crop[]; readonly places: LifterPlaces }
  | { readonly kind: 'revisiting'; readonly places: LifterPlaces };

/** A few pictures are tried for somebody who lies; `tried` takes, for each frame, what each crop shows. */
export type Trying = {
  readonly kind: 'trying';
  readonly crops: readonly Crop[];
  readonly places: LifterPlaces;
  readonly tried: Map<number, readonly (Body | null)[]>;
};

/** A look that is done. */
export type DoneLook = { readonly frame: number; readonly atS: number; readonly body: Body | null };

/** What following the clip once has shown. */
export type FirstPass = {
  readonly looks: readonly DoneLook[];
  readonly rounds: readonly Round[];
  readonly clicks: readonly LifterClick[];
  readonly evidence: LifterEvidence;
  /** Where something moves; null when that is nowhere in particular. */
  readonly motion: PointPx | null;
};

/** The next stage, and the frames it needs again, rising; none = all is seen. */
export type NextStage = { readonly stage: Stage; readonly frames: readonly number[] };

/** So many pictures tell whether somebody lies there. */
const picturesTried = 4;

/** After following the clip once: who lifts, and what to look at again because of it. */
export function afterFollowing(first: FirstPass): NextStage {
  const places = lifterPlaces(first.rounds, first.clicks, first.evidence);
  const lifted = places.isFound ? null : whereLifted(first);
  if (lifted === null) return revisit(first, places);
  const crops = cropsToTry(lifted, first.evidence.picture);
  const frames = spread(
    first.looks.map(({ frame }) => frame),
    picturesTried,
  );
  return { stage: { kind: 'trying', crops, places, tried: new Map() }, frames };
}

/** After the try: all looks again through the crops that show somebody who lies, if any does. */
export function afterTrying(first: FirstPass, { crops: tried, places, tried: shown }: Trying): NextStage {
  const inOrder = [...shown].sort(([one], [other]) => one - other).map(([, bodies]) => bodies);
  const crops = bestCrops(tried, inOrder);
  if (crops.length === 0) return revisit(first, places);
  return { stage: { kind: 'lying', crops, places }, frames: first.looks.map(({ frame }) => frame) };
}

/** Whether whoever was seen lying is the one who lifts. */
export function isLyingLifter(looks: readonly DoneLook[], { evidence }: FirstPass): boolean {
  const track: PersonTrack = looks.flatMap(({ body, ...when }) => {
    const box = body && boxOf(body);
    return body && box ? [{ ...when, body, box, isFollowed: false }] : [];
  });
  return track.length > 0 && lifts(track, evidence.bar);
}

/** What was followed is seen again as far as it was somebody else. */
export function revisit({ looks }: FirstPass, places: LifterPlaces): NextStage {
  const frames = looks.flatMap((look) => (isToSeeAgain(look, places) ? [look.frame] : []));
  return { stage: { kind: 'revisiting', places }, frames };
}

/** A look that showed nobody is repeated where the lifter was seen so shortly before or after. */
const knownWithinS = 0.4;

/** A look is worth repeating when it shows somebody else, or nobody while the lifter is known to be about there. */
function isToSeeAgain({ body, atS }: DoneLook, places: LifterPlaces): boolean {
  if (body !== null) return places.isOther(body, atS);
  const place = places.at(atS);
  return place !== null && place.passedS <= knownWithinS;
}

/** The middle of where the bar was, if it is known for a good part of the clip, else of what moves. */
function whereLifted({ looks, evidence, motion }: FirstPass): PointPx | null {
  const known = looks.flatMap(({ frame }) => evidence.bar(frame) ?? []);
  if (known.length < looks.length / 3) return motion;
  const middle = (along: (at: PointPx) => number) => {
    const sorted = known.map(along).sort((one, other) => one - other);
    return ((sorted[0] ?? 0) + (sorted.at(-1) ?? 0)) / 2;
  };
  return { xPx: middle(({ xPx }) => xPx), yPx: middle(({ yPx }) => yPx) };
}

/** So many of the items, evenly from first to last. */
function spread(frames: readonly number[], count: number): readonly number[] {
  const at = Array.from({ length: count }, (_, i) => frames[Math.round(((i + 0.5) * frames.length) / count - 0.5)]);
  return [...new Set(at.filter((frame) => frame !== undefined))];
}
