import { type Body, type JointName, jointNames, type Sighting } from '../recording.ts';

export type Side = 'left' | 'right';

/** Joints that come in twos; the nose is its own pair. */
export const parts = ['nose', 'ear', 'shoulder', 'elbow', 'wrist', 'hip', 'knee', 'ankle'] as const;
export type Part = (typeof parts)[number];

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
