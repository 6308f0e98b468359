import type { PointPx } from '../../recording/recording.ts';
import type { Measured, RepJoints, Span, Unseen } from '../measurement.ts';
import { median, quantile } from '../signal/quantile.ts';
import { type BackPoints, backChangeDeg, forward, turned } from './angles.ts';
import type { BodyTrack } from './bodyTrack.ts';
import { type DepthView, depthByClicks, depthByJoints, outcomeOf, type PlaneScale } from './depth.ts';
import { isRead, type PostureReader, type Reading } from './posture.ts';

export type RepToMeasure = {
  readonly span: Span;
  /** Frame of the stretched end. */
  readonly stretchedEndFrame: number;
  /** A frame of the set-up, before the first rep: what the head and the back are compared with. */
  readonly setUpFrame: number;
  readonly scale: PlaneScale | null;
  /** Clicked by the coach at a frame of this rep: judged in place of the joints. */
  readonly depthClick: { readonly frame: number; readonly hipCrease: PointPx; readonly kneeTop: PointPx } | null;
  /** Clicked at the set-up, and at a frame of this rep. */
  readonly backClicks: { readonly setUp: BackPoints; readonly rep: BackPoints } | null;
};

/** Around the stretched end, within which the lowest frame for the depth is looked for. */
const lowestWithinS = 0.25;
/** Around the set-up frame, over which the head is taken. */
const setUpWithinS = 0.2;
/** A largest value is the one that so many frames of the rep stay below, so that no single frame makes it. */
const largest = 0.97;

/** What the joints, and the coach's clicks, say of one rep, with what can't be seen in it. */
export function measureRepJoints(track: BodyTrack, posture: PostureReader, rep: RepToMeasure): RepJoints {
  const inRep = framesWithin(track, rep.span.startS, rep.span.endS);
  const { knee, hip, trunkLean, shankLean } = posture.at(rep.stretchedEndFrame);
  const depth = depthOf(track, posture, rep);
  const head = headChange(track, posture, inRep, rep.setUpFrame);
  return {
    kneeDeg: told(knee),
    hipDeg: told(hip),
    trunkLeanDeg: told(trunkLean),
    shankLeanDeg: told(shankLean),
    trunkLeanMaxDeg: largestLean(posture, inRep),
    headTrunkDeg: told(head),
    depthM: depth?.m ?? null,
    depthOutcome: depth ? outcomeOf(depth.m) : null,
    depthFrom: depth?.from ?? null,
    backChangeDeg: rep.backClicks && backChangeDeg(rep.backClicks.setUp, rep.backClicks.rep, track.facing),
    unseen: unseenOf({ knee, hip, trunkLean, head }),
  };
}

const told = (reading: Reading): Measured | null => (isRead(reading) ? reading : null);

function framesWithin({ timesS }: BodyTrack, fromS: number, toS: number): readonly number[] {
  return timesS.flatMap((timeS, frame) => (timeS >= fromS && timeS <= toS ? [frame] : []));
}

function framesAround(track: BodyTrack, frame: number, withinS: number): readonly number[] {
  const timeS = track.timesS[frame] ?? 0;
  return framesWithin(track, timeS - withinS, timeS + withinS);
}

function largestLean(posture: PostureReader, frames: readonly number[]): Measured | null {
  const leans = frames.map((frame) => posture.at(frame).trunkLean).filter(isRead);
  if (leans.length < frames.length / 2 || leans.length === 0) return null;
  return {
    value: quantile(
      leans.map(({ value }) => value),
      largest,
    ),
    plusMinus: Math.max(...leans.map(({ plusMinus }) => plusMinus)),
  };
}

/** Largest change of the head against the trunk since the set-up; told only when at least half of the rep shows the head. */
function headChange(track: BodyTrack, posture: PostureReader, frames: readonly number[], setUpFrame: number): Reading {
  const pitches = (of: readonly number[]) => of.map((frame) => posture.at(frame).headPitch);
  const before = pitches(framesAround(track, setUpFrame, setUpWithinS));
  const during = pitches(frames);
  const seenBefore = before.filter(isRead);
  const seen = during.filter(isRead);
  const hidden = [...before, ...during].find((reading) => !isRead(reading));
  if (seenBefore.length === 0 || seen.length === 0 || seen.length < during.length / 2) {
    return hidden ?? { part: 'nose', why: 'unclear' };
  }
  const start = median(seenBefore.map(({ value }) => value));
  const changes = seen.map(({ value }) => turned(value - start));
  const up = quantile(changes, largest);
  const down = quantile(changes, 1 - largest);
  return {
    value: Math.abs(up) >= Math.abs(down) ? up : down,
    plusMinus: Math.max(...seen.map((one) => one.plusMinus)),
  };
}

function depthOf(track: BodyTrack, posture: PostureReader, rep: RepToMeasure) {
  const view = (frame: number): DepthView => ({
    scale: rep.scale,
    heightPx: track.heightPx,
    pictureHeightPx: track.picture.height,
    rollDeg: forward(track.facing) * track.tiltDeg(frame),
  });
  if (rep.depthClick !== null) {
    return { from: 'clicks', m: depthByClicks(rep.depthClick, view(rep.depthClick.frame)) } as const;
  }
  const depths = framesAround(track, rep.stretchedEndFrame, lowestWithinS).flatMap((frame) => {
    const thigh = posture.thighAt(frame);
    return 'why' in thigh ? [] : [depthByJoints(thigh, view(frame))];
  });
  const lowest = depths.sort((one, other) => one.value - other.value)[0];
  return lowest === undefined ? null : ({ from: 'joints', m: lowest } as const);
}

/** Each joint that can't be seen, with what can't be known because of it. */
export function unseenOf(readings: Readonly<Record<Unseen['lost'][number], Reading>>): Unseen[] {
  const found = new Map<string, Unseen>();
  for (const asked of ['knee', 'hip', 'trunkLean', 'head'] as const) {
    const reading = readings[asked];
    if (isRead(reading)) continue;
    const { part, why } = reading;
    const key = `${part} ${why}`;
    found.set(key, { part, why, lost: [...(found.get(key)?.lost ?? []), asked] });
  }
  return [...found.values()];
}
