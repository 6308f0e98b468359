import type { View } from '../../exercises/exercise.ts';
import { radians } from '../joints/angles.ts';
import type { Bodies } from '../joints/points.ts';
import type { Measured, ViewRead } from '../measurement.ts';
import { type Cues, cuesOf } from './cues.ts';
import { bendLikelihood, likelihood } from './likelihood.ts';

/** Azimuths are tried in steps of this. */
const stepDeg = 2;
/** A view goes as far as half-way to the next: side, front and rear lie 45° from the three-quarter views. */
const halfSectorDeg = 22.5;
/** Less sure than this is not told. */
const leastSureness = 0.5;
/** A facing is told when it is this much surer than the other one. */
const leastFacing = 0.9;

/**
 * Widths between a body's joints and the nose's distance in front of the ears, in body heights, as the network puts them, with
 * how far people and the network differ (`scatter`, a share) and how far it errs anyway (`off`).
 */
const widths = {
  shoulders: { value: 0.21, scatter: 0.13, off: 0.02 },
  hips: { value: 0.13, scatter: 0.15, off: 0.015 },
  nose: { value: 0.065, scatter: 0.25, off: 0.012 },
};
/** How far knees and hips can bend out of the line of their neighbours, and how far the network errs there. */
const bends = { knees: { most: 0.22, off: 0.015 }, hips: { most: 0.25, off: 0.02 } };

/**
 * Where the camera stands, read from all the frames of a clip together: from in front and from behind the shoulders and
 * hips are wide apart, and the left ones are on opposite sides; from the side the nose, bent knees and bent hips point the
 * way the lifter faces. Each azimuth is weighed by how well it explains these; the answer is what most of the weight says.
 * Null when too little is seen, or no view has half of the weight.
 */
export function readView(joints: Bodies): ViewRead | null {
  const cues = cuesOf(joints);
  if (cues === null || (cues.shouldersAcross === null && cues.hipsAcross === null)) return null;
  const weighed = weigh(cues);
  const [best] = (['side', 'oblique', 'front', 'rear'] as const)
    .map((view) => ({ view, sureness: weightOf(weighed, (azimuth) => viewAt(Math.abs(azimuth)) === view) }))
    .sort((one, other) => other.sureness - one.sureness);
  if (!best || best.sureness < leastSureness) return null;
  return { ...best, facing: facingOf(weighed), azimuthDeg: azimuthOf(weighed) };
}

/** What a camera at an azimuth of 0-180° sees: the nearest of the views. */
export function viewAt(azimuthDeg: number): View {
  if (azimuthDeg <= halfSectorDeg) return 'front';
  if (azimuthDeg >= 180 - halfSectorDeg) return 'rear';
  return Math.abs(azimuthDeg - 90) <= halfSectorDeg ? 'side' : 'oblique';
}

/** Azimuth, above 0 with a lifter who faces the picture's right, below 0 the left; weights add up to 1. */
type Weighed = readonly { readonly azimuthDeg: number; readonly weight: number }[];

function weigh(cues: Cues): Weighed {
  const azimuths = Array.from({ length: 360 / stepDeg }, (_, index) => -180 + (index + 0.5) * stepDeg);
  const weighed = azimuths.map((azimuthDeg) => ({ azimuthDeg, weight: explains(cues, radians(azimuthDeg)) }));
  const sum = weighed.reduce((all, { weight }) => all + weight, 0);
  return weighed.map(({ azimuthDeg, weight }) => ({ azimuthDeg, weight: weight / sum }));
}

function explains(cues: Cues, azimuth: number): number {
  const [across, forward] = [Math.cos(azimuth), Math.sin(azimuth)];
  return (
    likelihood(cues.shouldersAcross, across, widths.shoulders) *
    likelihood(cues.hipsAcross, across, widths.hips) *
    likelihood(cues.noseForward, forward, widths.nose) *
    bendLikelihood(cues.kneesForward, forward, bends.knees) *
    bendLikelihood(cues.hipsForward, forward, bends.hips)
  );
}

const weightOf = (weighed: Weighed, counts: (azimuthDeg: number) => boolean): number =>
  weighed.reduce((sum, { azimuthDeg, weight }) => (counts(azimuthDeg) ? sum + weight : sum), 0);

function facingOf(weighed: Weighed): ViewRead['facing'] {
  const right = weightOf(weighed, (azimuthDeg) => azimuthDeg > 0);
  if (right >= leastFacing) return 'right';
  return right <= 1 - leastFacing ? 'left' : null;
}

/** The middle of the weight, whichever way the lifter faces, and the half-width that holds nine tenths of it. */
function azimuthOf(weighed: Weighed): Measured {
  const folded = weighed
    .map(({ azimuthDeg, weight }) => ({ azimuthDeg: Math.abs(azimuthDeg), weight }))
    .sort((one, other) => one.azimuthDeg - other.azimuthDeg);
  let sum = 0;
  const value =
    folded.find(({ weight }) => {
      sum += weight;
      return sum >= 0.5;
    })?.azimuthDeg ?? 90;
  const byDistance = folded
    .map(({ azimuthDeg, weight }) => ({ apart: Math.abs(azimuthDeg - value), weight }))
    .sort((one, other) => one.apart - other.apart);
  sum = 0;
  const plusMinus =
    byDistance.find(({ weight }) => {
      sum += weight;
      return sum >= 0.9;
    })?.apart ?? 90;
  return { value: Math.round(value), plusMinus: Math.ceil(plusMinus + stepDeg / 2) };
}
