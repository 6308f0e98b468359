import type { Measured } from '../measurement.ts';
import type { PointPx } from '../recording.ts';
import { bendDeg, degrees, forward, headPitchDeg, leanDeg, turned } from './angles.ts';
import { leanByBar } from './barOnBack.ts';
import type { BodyTrack } from './bodyTrack.ts';
import { hipCentre, kneeBetween } from './legs.ts';
import type { Part } from './parts.ts';
import { between, distancePx, median } from './places.ts';
import type { Visibility } from './visibility.ts';

/** A joint that keeps an angle from being told, and why. */
export type Missing = { readonly part: Part; readonly why: Exclude<Visibility, 'seen'> };
/** An angle in degrees, or what is missing for it. */
export type Reading = Measured | Missing;

export type Posture = {
  readonly knee: Reading;
  readonly hip: Reading;
  readonly trunkLean: Reading;
  readonly shankLean: Reading;
  /** Of use as a change since another frame only. */
  readonly headPitch: Reading;
};

/** Reads the posture of any frame. */
export type PostureReader = {
  readonly at: (frame: number) => Posture;
  /** Hip as the network puts it (at the crease when bent) and knee; what keeps them from being seen. */
  readonly thighAt: (frame: number) => { readonly hip: PointPx; readonly knee: PointPx } | Missing;
};

/**
 * Half-widths, in degrees, that held the truth nine times in ten on rendered lifters; `hidden`: the knee is behind the
 * disc and follows from hip, ankle and the leg's lengths.
 */
const plusMinus = {
  knee: 10,
  kneeHidden: 18,
  hip: 15,
  trunkByShoulder: 12,
  trunkByBar: 9,
  shank: 8,
  shankHidden: 15,
  headPitch: 14,
};
/** An ankle that strays so far from where its foot stands, in body heights, is a mistake. */
const ankleStray = 0.05;

export const isRead = (reading: Reading): reading is Measured => 'value' in reading;

export function postureReader(track: BodyTrack): PostureReader {
  const { facing, places } = track;
  const byBar = leanByBar(track);
  const lengths = legLengths(track);
  const shown = (part: Part, frame: number): PointPx | Missing => {
    const visibility = track.visibility[part][frame] ?? 'unclear';
    const place = places[part][frame] ?? null;
    if (visibility === 'seen') return place ?? { part, why: 'unclear' };
    return { part, why: visibility };
  };
  const ankleAt = (frame: number): PointPx | Missing => {
    const seen = shown('ankle', frame);
    const stands = track.planted?.(frame) ?? null;
    if (stands === null) return seen;
    return isMissing(seen) || distancePx(seen, stands) > ankleStray * track.heightPx ? stands : seen;
  };
  const legAt = (frame: number): Leg | Missing => {
    const hipSeen = shown('hip', frame);
    const knee = shown('knee', frame);
    const ankle = ankleAt(frame);
    if (isMissing(hipSeen)) return hipSeen;
    if (isMissing(ankle)) return ankle;
    const shoulder = places.shoulder[frame] ?? hipSeen;
    if (!isMissing(knee)) return { hip: hipCentre(hipSeen, knee, shoulder, facing), knee, ankle, hidden: hip.why };
    const guess = places.knee[frame] ?? null;
    const hip = guess === null ? hipSeen : hipCentre(hipSeen, guess, shoulder, facing);
    if (guess === null || lengths === null || knee.why !== 'behindDisc') return knee;
    const byLengths = kneeBetween(hip, ankle, lengths, facing);
    return byLengths === null ? knee : { hip, knee: between(guess, byLengths), ankle, hidden: true };
  };
  const trunkAt = (frame: number): Reading => {
    const lean = byBar?.(frame) ?? null;
    if (lean !== null) return { value: turned(lean - track.tiltDeg(frame)), plusMinus: plusMinus.trunkByBar };
    const hip = shown('hip', frame);
    const shoulder = shown('shoulder', frame);
    if (isMissing(hip)) return hip;
    if (isMissing(shoulder)) return shoulder;
    return {
      value: turned(leanDeg(hip, shoulder, facing) - track.tiltDeg(frame)),
      plusMinus: plusMinus.trunkByShoulder,
    };
  };
  return {
    at: (frame) => {
      const leg = legAt(frame);
      const trunk = trunkAt(frame);
      return {
        knee: isMissing(leg) ? leg : kneeOf(leg),
        hip: hipOf(leg, trunk, track, frame),
        trunkLean: trunk,
        shankLean: isMissing(leg)
          ? leg
          : {
              value: turned(leanDeg(leg.ankle, leg.knee, facing) - track.tiltDeg(frame)),
              plusMinus: leg.hidden ? plusMinus.shankHidden : plusMinus.shank,
            },
        headPitch: headOf({ ear: shown('ear', frame), nose: shown('nose', frame) }, trunk, track, frame),
      };
    },
    thighAt: (frame) => {
      const hip = shown('hip', frame);
      const knee = shown('knee', frame);
      if (isMissing(hip)) return hip;
      return isMissing(knee) ? knee : { hip, knee };
    },
  };
}

type Leg = { readonly hip: PointPx; readonly knee: PointPx; readonly ankle: PointPx; readonly hidden: boolean };

const isMissing = (place: PointPx | Leg | Missing): place is Missing => 'why' in place;

function kneeOf({ hip, knee, ankle, hidden }: Leg): Measured {
  return { value: bendDeg(hip, knee, ankle), plusMinus: hidden ? plusMinus.kneeHidden : plusMinus.knee };
}

/** Trunk's lean and the thigh's way forward of straight down together: the bend between them. */
function hipOf(leg: Leg | Missing, trunk: Reading, track: BodyTrack, frame: number): Reading {
  if (isMissing(leg)) return leg;
  if (!isRead(trunk)) return trunk;
  const { hip, knee } = leg;
  const thigh = degrees(Math.atan2(forward(track.facing) * (knee.xPx - hip.xPx), knee.yPx - hip.yPx));
  return { value: Math.abs(turned(trunk.value + track.tiltDeg(frame) + thigh)), plusMinus: plusMinus.hip };
}

function headOf(
  { ear, nose }: { readonly ear: PointPx | Missing; readonly nose: PointPx | Missing },
  trunk: Reading,
  track: BodyTrack,
  frame: number,
): Reading {
  if (isMissing(nose)) return nose;
  if (isMissing(ear)) return ear;
  if (!isRead(trunk)) return trunk;
  const value = headPitchDeg({ ear, nose }, trunk.value + track.tiltDeg(frame), track.facing);
  return { value, plusMinus: plusMinus.headPitch };
}

/** Lengths of thigh and shank in the picture, from frames that show either whole. */
function legLengths({ places, visibility, timesS, facing, planted }: BodyTrack) {
  const thighs: number[] = [];
  const shanks: number[] = [];
  timesS.forEach((_, frame) => {
    const [hip, knee, ankle] = [places.hip[frame] ?? null, places.knee[frame] ?? null, places.ankle[frame] ?? null];
    if (knee === null || visibility.knee[frame] !== 'seen') return;
    if (hip !== null) thighs.push(distancePx(hipCentre(hip, knee, places.shoulder[frame] ?? hip, facing), knee));
    const stands = planted?.(frame) ?? (visibility.ankle[frame] === 'seen' ? ankle : null);
    if (stands !== null) shanks.push(distancePx(knee, stands));
  });
  return thighs.length < 5 || shanks.length < 5 ? null : { thighPx: median(thighs), shankPx: median(shanks) };
}
