import type { Body, PointPx } from '../../recording/recording.ts';
import { type Bodies, between, distancePx, jointOf, type Part } from '../joints/points.ts';
import { median, quantile } from '../signal/quantile.ts';

/** One cue over the clip: its usual value in body heights, and how many frames showed it; null where too few did. */
export type Cue = { readonly value: number; readonly frames: number } | null;

/**
 * What tells where the camera stands, in body heights. `across`: how far the left joint is to the picture's right of the right
 * one; `forward`: how far a joint is to the right of where it would be without the lifter's front, with the body turned
 * upright in the picture.
 */
export type Cues = {
  readonly shouldersAcross: Cue;
  readonly hipsAcross: Cue;
  readonly noseForward: Cue;
  readonly kneesForward: Cue;
  readonly hipsForward: Cue;
};

/** The confidence from which a joint is good for a cue. */
const leastConfidence = 0.3;
const leastFrames = 5;
/** Shares of standing height (Drillis & Contini 1966). */
const segments = [
  { from: 'shoulder', to: 'hip', share: 0.288 },
  { from: 'hip', to: 'knee', share: 0.245 },
  { from: 'knee', to: 'ankle', share: 0.246 },
] as const;
/** Which of a segment's lengths counts: foreshortened it looks short, never long. */
const longOf = 0.8;
/** The bend of a joint is judged by the share of frames that bend it most. */
const bentOf = 0.8;

/** Reads the cues from the raw joints of a clip; null when too little of a body is seen. */
export function cuesOf({ frames }: Bodies): Cues | null {
  const bodies = frames.filter((body) => body !== null);
  const heightPx = heightOf(bodies);
  if (heightPx === null) return null;
  const upright = uprightOf(bodies, heightPx);
  const across = (part: Part) =>
    bodies.flatMap((body) => {
      const [left, right] = [jointOf(body, part, 'left'), jointOf(body, part, 'right')];
      if (Math.min(left.confidence, right.confidence) < leastConfidence) return [];
      return [upright({ xPx: left.xPx - right.xPx, yPx: left.yPx - right.yPx }) / heightPx];
    });
  return {
    shouldersAcross: cue(across('shoulder'), 0.5),
    hipsAcross: cue(across('hip'), 0.5),
    noseForward: cue(
      bodies.flatMap((body) => noseForward(body, heightPx)),
      0.5,
    ),
    kneesForward: strongest(bodies.flatMap((body) => kneesForward(body, heightPx))),
    hipsForward: strongest(bodies.flatMap((body) => hipsForward(body, heightPx))),
  };
}

function cue(values: readonly number[], share: number): Cue {
  return values.length < leastFrames ? null : { value: quantile(values, share), frames: values.length };
}

/** Of a joint that bends to one side alone: its value when it is bent most. */
function strongest(values: readonly number[]): Cue {
  const [most, least] = [cue(values, bentOf), cue(values, 1 - bentOf)];
  if (most === null || least === null) return null;
  return Math.abs(most.value) >= Math.abs(least.value) ? most : least;
}

/** Standing height in pixels from the segments that are seen, each at its longest. */
function heightOf(bodies: readonly Body[]): number | null {
  const seen = segments.flatMap(({ from, to, share }) => {
    const lengths = bodies.flatMap((body) =>
      (['left', 'right'] as const).flatMap((side) => {
        const [one, other] = [jointOf(body, from, side), jointOf(body, to, side)];
        return Math.min(one.confidence, other.confidence) < leastConfidence ? [] : [distancePx(one, other)];
      }),
    );
    return lengths.length < leastFrames ? [] : [{ lengthPx: quantile(lengths, longOf), share }];
  });
  const shares = seen.reduce((sum, { share }) => sum + share, 0);
  const lengthPx = seen.reduce((sum, one) => sum + one.lengthPx, 0);
  return shares === 0 || lengthPx < 1 ? null : lengthPx / shares;
}

const middleOf = (body: Body, part: Part): PointPx =>
  between(jointOf(body, part, 'left'), jointOf(body, part, 'right'));
const isSeen = (body: Body, parts: readonly Part[]): boolean =>
  parts.every((part) =>
    (['left', 'right'] as const).some((side) => jointOf(body, part, side).confidence >= leastConfidence),
  );

/** A trunk so many times as long as the shoulders are wide lies nearly in the picture's plane. */
const longTrunk = 1.2;
/** Shoulders this far above each other, in body heights, are those of a body that lies on its side. */
const stacked = 0.13;

/**
 * How far a vector points to the right in the picture, once the body is turned upright there: as it is, except for a body upside
 * down, and for one that lies on its side.
 */
function uprightOf(bodies: readonly Body[], heightPx: number): (vector: PointPx) => number {
  const trunks = bodies.flatMap((body) => {
    if (!isSeen(body, ['shoulder', 'hip'])) return [];
    const [top, bottom] = [middleOf(body, 'shoulder'), middleOf(body, 'hip')];
    return [{ xPx: top.xPx - bottom.xPx, yPx: top.yPx - bottom.yPx }];
  });
  const x = median(trunks.map(({ xPx }) => xPx));
  const y = median(trunks.map(({ yPx }) => yPx));
  const widthPx = median(
    bodies.map((body) => distancePx(jointOf(body, 'shoulder', 'left'), jointOf(body, 'shoulder', 'right'))),
  );
  if (Math.abs(y) >= Math.abs(x)) return y > longTrunk * widthPx ? ({ xPx }) => -xPx : ({ xPx }) => xPx;
  const sense = x > 0 ? -1 : 1;
  const over = (['shoulder', 'hip'] as const).map(
    (part) =>
      Math.abs(median(bodies.map((body) => jointOf(body, part, 'left').yPx - jointOf(body, part, 'right').yPx))) /
      heightPx,
  );
  const [shoulders = 0, hips = 0] = over;
  return shoulders > stacked && hips > stacked / 2 ? ({ yPx }) => -sense * yPx : ({ xPx }) => xPx;
}

/** How far the middle of three points is to the right of the line between the others, upper end up. */
function rightOfLine(upper: PointPx, middle: PointPx, lower: PointPx): number | null {
  const [upX, upY] = [upper.xPx - lower.xPx, upper.yPx - lower.yPx];
  const lengthPx = Math.hypot(upX, upY);
  if (lengthPx < 1) return null;
  return ((middle.yPx - lower.yPx) * upX - (middle.xPx - lower.xPx) * upY) / lengthPx;
}

/** The nose in front of the ears, square to the trunk. */
function noseForward(body: Body, heightPx: number): number[] {
  if (!isSeen(body, ['nose', 'ear', 'shoulder', 'hip'])) return [];
  const [top, bottom] = [middleOf(body, 'shoulder'), middleOf(body, 'hip')];
  const ears = middleOf(body, 'ear');
  const nose = jointOf(body, 'nose', 'left');
  const up = { xPx: ears.xPx + top.xPx - bottom.xPx, yPx: ears.yPx + top.yPx - bottom.yPx };
  const forward = rightOfLine(up, nose, ears);
  return forward === null ? [] : [forward / heightPx];
}

/** Knees bend to the front alone: both together, out of the line from hip to ankle. */
function kneesForward(body: Body, heightPx: number): number[] {
  const legs = (['left', 'right'] as const).flatMap((side) => {
    const [hip, knee, ankle] = (['hip', 'knee', 'ankle'] as const).map((part) => jointOf(body, part, side));
    if (!hip || !knee || !ankle) return [];
    if (Math.min(hip.confidence, knee.confidence, ankle.confidence) < leastConfidence) return [];
    return rightOfLine(hip, knee, ankle) ?? [];
  });
  const [one, other] = legs;
  return one === undefined || other === undefined ? [] : [(one + other) / 2 / heightPx];
}

/** Hips bend backwards alone: out of the line from shoulder to knee; turned round, so that a lifter who faces right is above 0. */
function hipsForward(body: Body, heightPx: number): number[] {
  if (!isSeen(body, ['shoulder', 'hip', 'knee'])) return [];
  const back = rightOfLine(middleOf(body, 'shoulder'), middleOf(body, 'hip'), middleOf(body, 'knee'));
  return back === null ? [] : [-back / heightPx];
}
