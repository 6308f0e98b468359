import { type Body, type JointName, jointNames, type PointPx, type Sighting } from '../../recording/recording.ts';
import { median } from '../signal/quantile.ts';

export type Side = 'left' | 'right';

/** Bodies through a clip, one item a frame, as a recording holds them. */
export type Bodies = { readonly frames: readonly (Body | null)[] };

/** Joints of either side; the nose counts for both. */
export type Part = 'nose' | 'ear' | 'shoulder' | 'elbow' | 'wrist' | 'hip' | 'knee' | 'ankle';

const names: Readonly<Record<Part, Readonly<Record<Side, JointName>>>> = {
  nose: { left: 'nose', right: 'nose' },
  ear: { left: 'leftEar', right: 'rightEar' },
  shoulder: { left: 'leftShoulder', right: 'rightShoulder' },
  elbow: { left: 'leftElbow', right: 'rightElbow' },
  wrist: { left: 'leftWrist', right: 'rightWrist' },
  hip: { left: 'leftHip', right: 'rightHip' },
  knee: { left: 'leftKnee', right: 'rightKnee' },
  ankle: { left: 'leftAnkle', right: 'rightAnkle' },
};
const unseen: Sighting = { xPx: 0, yPx: 0, confidence: 0 };

/** A joint of one side of a body, as the network saw it. */
export function jointOf(body: Body, part: Part, side: Side): Sighting {
  return body[jointNames.indexOf(names[part][side])] ?? unseen;
}

export const otherSide = (side: Side): Side => (side === 'left' ? 'right' : 'left');

/** Makes one thing for every joint. */
export function forParts<T>(make: (part: Part) => T): Readonly<Record<Part, T>> {
  return {
    nose: make('nose'),
    ear: make('ear'),
    shoulder: make('shoulder'),
    elbow: make('elbow'),
    wrist: make('wrist'),
    hip: make('hip'),
    knee: make('knee'),
    ankle: make('ankle'),
  };
}

export const distancePx = (one: PointPx, other: PointPx): number =>
  Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx);

export const between = (one: PointPx, other: PointPx): PointPx => ({
  xPx: (one.xPx + other.xPx) / 2,
  yPx: (one.yPx + other.yPx) / 2,
});

/** The median point, by each coordinate; null for none. */
export function medianPoint(points: readonly PointPx[]): PointPx | null {
  if (points.length === 0) return null;
  return { xPx: median(points.map(({ xPx }) => xPx)), yPx: median(points.map(({ yPx }) => yPx)) };
}
