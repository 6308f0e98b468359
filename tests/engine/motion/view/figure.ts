import type { Body } from '../../../../engine/recording/recording.ts';
import { whiteNoise } from '../signal/whiteNoise.ts';

/** A place in a lifter's own directions, in standing heights: forward, to the lifter's left, up. */
type Place = readonly [forward: number, left: number, up: number];

/** Lengths in standing heights: Drillis & Contini 1966; the joints' own widths from rendered lifters of both sexes (0.19-0.22, 0.12-0.13). */
const lengths = {
  shank: 0.246,
  thigh: 0.245,
  trunk: 0.288,
  upperArm: 0.186,
  forearm: 0.146,
  shoulders: 0.205,
  hips: 0.125,
};

export type Posture = {
  readonly kneeDeg: number;
  /** Lean of the trunk, + = forward. */
  readonly leanDeg: number;
  /** The whole body turned about its left-right axis, + = forward: 90 = face down, −90 = on the back. */
  readonly pitchDeg?: number;
  /** The whole body turned about its forward axis: 90 = lies on its right side. */
  readonly rollDeg?: number;
};

const radians = (angleDeg: number): number => (angleDeg * Math.PI) / 180;

/** Shares of a body's joints in the order of a recording: ankles under the hips, arms hanging. */
function places({ kneeDeg, leanDeg }: Posture): Place[] {
  const [shank, thigh, trunk] = [radians(0.3 * kneeDeg), radians(-0.7 * kneeDeg), radians(leanDeg)];
  const knee = [lengths.shank * Math.sin(shank), lengths.shank * Math.cos(shank)] as const;
  const hip = [knee[0] + lengths.thigh * Math.sin(thigh), knee[1] + lengths.thigh * Math.cos(thigh)] as const;
  const along = (m: number) => [hip[0] + m * Math.sin(trunk), hip[1] + m * Math.cos(trunk)] as const;
  const shoulder = along(lengths.trunk);
  const ear = along(lengths.trunk + 0.1);
  const ahead = (m: number, up: number) =>
    [ear[0] + m * Math.cos(trunk) + up * Math.sin(trunk), ear[1] - m * Math.sin(trunk) + up * Math.cos(trunk)] as const;
  const both = ([x, z]: readonly [number, number], width: number): Place[] => [
    [x, width / 2, z],
    [x, -width / 2, z],
  ];
  const elbow = [shoulder[0], shoulder[1] - lengths.upperArm] as const;
  const wrist = [elbow[0] + 0.05, elbow[1] - lengths.forearm] as const;
  return [
    [ahead(0.065, 0)[0], 0, ahead(0.065, 0)[1]],
    ...both(ahead(0.05, 0.02), 0.035),
    ...both(ear, 0.08),
    ...both(shoulder, lengths.shoulders),
    ...both(elbow, lengths.shoulders + 0.04),
    ...both(wrist, lengths.shoulders + 0.04),
    ...both(hip, lengths.hips),
    ...both(knee, lengths.hips + 0.03),
    ...both([0, 0], lengths.hips + 0.02),
  ];
}

function turned([forward, left, up]: Place, { pitchDeg = 0, rollDeg = 0 }: Posture): Place {
  const [pitch, roll] = [radians(pitchDeg), radians(rollDeg)];
  const [x, z] = [forward * Math.cos(pitch) + up * Math.sin(pitch), up * Math.cos(pitch) - forward * Math.sin(pitch)];
  return [x, left * Math.cos(roll) + z * Math.sin(roll), z * Math.cos(roll) - left * Math.sin(roll)];
}

/** Postures of a movement to and fro, twice. */
export const toAndFro = (posture: (share: number) => Posture, frames = 40): Posture[] =>
  Array.from({ length: frames }, (_, frame) => posture((1 - Math.cos((2 * Math.PI * frame) / (frames / 2))) / 2));

/**
 * A figure in one posture a frame, as a camera far away sees it that stands at an azimuth (0 in front, 90 at the
 * lifter's right, −90 at the left, 180 behind) and looks down by some degrees. With white noise on each joint.
 */
export function seenFigure(
  postures: readonly Posture[],
  {
    azimuthDeg,
    downDeg = 8,
    heightPx = 300,
    noisePx = 3,
    seed = 1,
  }: {
    readonly azimuthDeg: number;
    readonly downDeg?: number;
    readonly heightPx?: number;
    readonly noisePx?: number;
    readonly seed?: number;
  },
): { readonly frames: readonly Body[] } {
  const [round, down] = [radians(azimuthDeg), radians(downDeg)];
  const noise = whiteNoise(postures.length * 34, seed);
  return {
    frames: postures.map((now, frame) => {
      return places(now).map((place, joint) => {
        const [forward, left, up] = turned(place, now);
        const right = left * Math.cos(round) + forward * Math.sin(round);
        const near = forward * Math.cos(round) - left * Math.sin(round);
        const off = (axis: 0 | 1) => noisePx * (noise[34 * frame + 2 * joint + axis] ?? 0);
        return {
          xPx: 320 + heightPx * right + off(0),
          yPx: 330 - heightPx * (up * Math.cos(down) - near * Math.sin(down)) + off(1),
          confidence: 0.7,
        };
      });
    }),
  };
}
