import type { PointPx } from '../../recording/recording.ts';
import type { Measured } from '../measurement.ts';
import { bendDeg, degrees, forward, headPitchDeg, leanDeg, turned } from './angles.ts';
import { leanByBar } from './barOnBack.ts';
import type { BodyTrack } from './bodyTrack.ts';
import { isMissing, type Leg, type Missing, type Sight, sightOf } from './sight.ts';

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

/** Reads the posture in any frame. */
export type PostureReader = {
  readonly at: (frame: number) => Posture;
  /** Hip as the network puts it (at the crease when bent) and knee, both seen; or what keeps them from it. */
  readonly thighAt: (frame: number) => { readonly hip: PointPx; readonly knee: PointPx } | Missing;
};

/**
 * Half-widths, in degrees, that held the truth nine times in ten and more on rendered lifters. `guessed`: a joint is behind
 * the disc and follows from its neighbours.
 */
const plusMinus = {
  knee: { seen: 10, guessed: 18 },
  hip: { seen: 15, guessed: 22 },
  shank: { seen: 8, guessed: 15 },
  trunkByBar: 9,
  trunkByShoulder: { seen: 12, guessed: 14 },
  headPitch: 16,
};

export const isRead = (reading: Reading): reading is Measured => 'value' in reading;

/** Reads angles from the joints of a clip; leans are measured against the room's upright, not the picture's. */
export function postureReader(track: BodyTrack): PostureReader {
  const sight = sightOf(track);
  const trunkLeanAt = trunkReader(track, sight);
  return {
    at: (frame) => {
      const leg = sight.leg(frame);
      const trunkLean = trunkLeanAt(frame);
      return {
        knee: isMissing(leg) ? leg : kneeOf(leg),
        hip: hipOf(leg, trunkLean, { track, frame }),
        trunkLean,
        shankLean: isMissing(leg) ? leg : shankOf(leg, { track, frame }),
        headPitch: headOf(sight, trunkLean, { track, frame }),
      };
    },
    thighAt: (frame) => {
      const hip = sight.hip(frame);
      const knee = sight.shown('knee', frame);
      if (isMissing(hip)) return hip;
      if (hip.guessed) return { part: 'hip', why: 'behindDisc' };
      return isMissing(knee) ? knee : { hip: hip.at, knee };
    },
  };
}

type Where = { readonly track: BodyTrack; readonly frame: number };

const sureness = (guessed: boolean) => (guessed ? 'guessed' : 'seen');

/** By the bar where it lies on the shoulders, else from hip to shoulder. */
function trunkReader(track: BodyTrack, sight: Sight): (frame: number) => Reading {
  const byBar = leanByBar(track);
  return (frame) => {
    const tilt = track.tiltDeg(frame);
    const lean = byBar?.(frame) ?? null;
    if (lean !== null) return { value: turned(lean - tilt), plusMinus: plusMinus.trunkByBar };
    const hip = sight.hip(frame);
    const shoulder = sight.shown('shoulder', frame);
    if (isMissing(hip)) return hip;
    if (isMissing(shoulder)) return shoulder;
    return {
      value: turned(leanDeg(hip.at, shoulder, track.facing) - tilt),
      plusMinus: plusMinus.trunkByShoulder[sureness(hip.guessed)],
    };
  };
}

function kneeOf({ hip, knee, ankle }: Leg): Measured {
  return {
    value: bendDeg(hip.at, knee.at, ankle),
    plusMinus: plusMinus.knee[sureness(hip.guessed || knee.guessed)],
  };
}

function shankOf({ knee, ankle }: Leg, { track, frame }: Where): Measured {
  return {
    value: turned(leanDeg(ankle, knee.at, track.facing) - track.tiltDeg(frame)),
    plusMinus: plusMinus.shank[sureness(knee.guessed)],
  };
}

/** The trunk's lean plus the thigh's angle forward of straight down: the bend between them. */
function hipOf(leg: Leg | Missing, trunk: Reading, { track, frame }: Where): Reading {
  if (!isRead(trunk)) return trunk;
  if (isMissing(leg)) return leg;
  const hip = leg.hip.at;
  const knee = leg.knee.at;
  const thigh = degrees(Math.atan2(forward(track.facing) * (knee.xPx - hip.xPx), knee.yPx - hip.yPx));
  return {
    value: Math.abs(turned(trunk.value + track.tiltDeg(frame) + thigh)),
    plusMinus: plusMinus.hip[sureness(leg.hip.guessed || leg.knee.guessed)],
  };
}

function headOf(sight: Sight, trunk: Reading, { track, frame }: Where): Reading {
  const nose = sight.shown('nose', frame);
  const ear = sight.shown('ear', frame);
  if (isMissing(nose)) return nose;
  if (isMissing(ear)) return ear;
  if (!isRead(trunk)) return trunk;
  const value = headPitchDeg({ ear, nose }, trunk.value + track.tiltDeg(frame), track.facing);
  return { value, plusMinus: plusMinus.headPitch };
}
