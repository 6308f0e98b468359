import type { PointPx } from '../../recording/recording.ts';
import { median } from '../signal/quantile.ts';
import type { BodyTrack } from './bodyTrack.ts';
import { hipCentre, kneeBetween } from './legs.ts';
import type { Visibility } from './nearSide.ts';
import { between, distancePx, type Part } from './points.ts';

/** A joint that keeps something from being told, and why. */
export type Missing = { readonly part: Part; readonly why: Exclude<Visibility, 'seen'> };

/** A place, and whether it is a guess behind the disc that its neighbours bear out. */
export type Found = { readonly at: PointPx; readonly guessed: boolean };
export type Leg = { readonly hip: Found; readonly knee: Found; readonly ankle: PointPx };

/** Joints of a frame, as far as they can be had. */
export type Sight = {
  readonly shown: (part: Part, frame: number) => PointPx | Missing;
  /** As the network puts it; behind the disc when the knee below is seen, as with a bar held at the hips. */
  readonly hip: (frame: number) => Found | Missing;
  /** With the hip joint's centre. */
  readonly leg: (frame: number) => Leg | Missing;
};

/** An ankle that strays so far from where its foot stands, in body heights, is a mistake. */
const ankleStray = 0.05;

export const isMissing = (found: object): found is Missing => 'why' in found;

export function sightOf(track: BodyTrack): Sight {
  const { facing, points } = track;
  const lengths = legLengths(track);
  const shown = (part: Part, frame: number): PointPx | Missing => {
    const visibility = track.visibility[part][frame] ?? 'unclear';
    if (visibility !== 'seen') return { part, why: visibility };
    return points[part][frame] ?? { part, why: 'unclear' };
  };
  const hip = (frame: number): Found | Missing => {
    const seen = shown('hip', frame);
    if (!isMissing(seen)) return { at: seen, guessed: false };
    const guess = points.hip[frame] ?? null;
    const bornOut = seen.why === 'behindDisc' && !isMissing(shown('knee', frame));
    return guess !== null && bornOut ? { at: guess, guessed: true } : seen;
  };
  const ankle = (frame: number): PointPx | Missing => {
    const seen = shown('ankle', frame);
    const stands = track.planted?.(frame) ?? null;
    if (stands === null) return seen;
    return isMissing(seen) || distancePx(seen, stands) > ankleStray * track.heightPx ? stands : seen;
  };
  const leg = (frame: number): Leg | Missing => {
    const foot = ankle(frame);
    const top = hip(frame);
    const middle = shown('knee', frame);
    const guess = points.knee[frame] ?? null;
    if (isMissing(top)) return top;
    if (isMissing(foot)) return foot;
    const shoulder = points.shoulder[frame] ?? top.at;
    if (!isMissing(middle)) {
      const centre = hipCentre(top.at, middle, shoulder, facing);
      return { hip: { at: centre, guessed: top.guessed }, knee: { at: middle, guessed: false }, ankle: foot };
    }
    if (guess === null || lengths === null || middle.why !== 'behindDisc') return middle;
    const centre = hipCentre(top.at, guess, shoulder, facing);
    const byLengths = kneeBetween(centre, foot, lengths, facing);
    if (byLengths === null) return middle;
    return {
      hip: { at: centre, guessed: top.guessed },
      knee: { at: between(guess, byLengths), guessed: true },
      ankle: foot,
    };
  };
  return { shown, hip, leg };
}

/** Lengths of thigh and shank in the picture, from frames that show either; null when too few do. */
function legLengths({ points, visibility, timesS, facing, planted }: BodyTrack) {
  const thighs: number[] = [];
  const shanks: number[] = [];
  timesS.forEach((_, frame) => {
    const [hip, knee, ankle] = [points.hip[frame] ?? null, points.knee[frame] ?? null, points.ankle[frame] ?? null];
    if (knee === null || visibility.knee[frame] !== 'seen') return;
    if (hip !== null) thighs.push(distancePx(hipCentre(hip, knee, points.shoulder[frame] ?? hip, facing), knee));
    const foot = planted?.(frame) ?? (visibility.ankle[frame] === 'seen' ? ankle : null);
    if (foot !== null) shanks.push(distancePx(knee, foot));
  });
  return thighs.length < 5 || shanks.length < 5 ? null : { thighPx: median(thighs), shankPx: median(shanks) };
}
