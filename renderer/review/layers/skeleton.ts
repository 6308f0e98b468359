import {
  type Body,
  type JointName,
  type JointRecording,
  jointNames,
  type PointPx,
  type Sighting,
} from '../../../engine/recording/recording.ts';

/** A joint as it is drawn. */
export type DrawnJoint = {
  readonly name: JointName;
  readonly at: PointPx;
  /** `guessed`: the network put it there, but it can't be seen or is not sure. */
  readonly sight: 'seen' | 'guessed';
};
export type DrawnBone = { readonly from: DrawnJoint; readonly to: DrawnJoint };
export type Skeleton = { readonly joints: readonly DrawnJoint[]; readonly bones: readonly DrawnBone[] };

/** The near disc, which hides what is behind it. */
export type Hiding = { readonly at: PointPx; readonly radiusPx: number };

type Side = 'left' | 'right';

const chain = ['Ankle', 'Knee', 'Hip', 'Shoulder', 'Elbow', 'Wrist'] as const;
const leastSure = 0.3;

const namesOf = (side: Side): readonly JointName[] => [
  ...chain.map((part): JointName => `${side}${part}`),
  side === 'left' ? 'leftEar' : 'rightEar',
];

const sightingOf = (body: Body, name: JointName): Sighting | undefined => body[jointNames.indexOf(name)];

const sureness = (body: Body, side: Side): number =>
  namesOf(side).reduce((sum, name) => sum + (sightingOf(body, name)?.confidence ?? 0), 0);

const surerSide = (body: Body): Side => (sureness(body, 'left') > sureness(body, 'right') ? 'left' : 'right');

const isBehind = (at: PointPx, disc: Hiding | null): boolean =>
  disc !== null && Math.hypot(at.xPx - disc.at.xPx, at.yPx - disc.at.yPx) < disc.radiusPx;

/** The near side of the lifter as lines from joint to joint; the surer side where the near one is not known. */
export function skeletonOf(body: Body, nearSide: Side | null, disc: Hiding | null): Skeleton {
  const joints = namesOf(nearSide ?? surerSide(body)).flatMap((name): DrawnJoint[] => {
    const sighting = sightingOf(body, name);
    if (sighting === undefined) return [];
    const at = { xPx: sighting.xPx, yPx: sighting.yPx };
    const guessed = sighting.confidence < leastSure || isBehind(at, disc);
    return [{ name, at, sight: guessed ? 'guessed' : 'seen' }];
  });
  const limb = joints.slice(0, chain.length);
  const [shoulder, ear] = [joints[chain.indexOf('Shoulder')], joints[chain.length]];
  const bones = limb.flatMap((from, index): DrawnBone[] => {
    const to = limb[index + 1];
    return to === undefined ? [] : [{ from, to }];
  });
  return { joints, bones: shoulder && ear ? [...bones, { from: shoulder, to: ear }] : bones };
}

/** The body at a frame; between two frames that were looked at, what lies between them. Null where there is none. */
export function bodyAt({ everyFrames, frames }: JointRecording, frame: number): Body | null {
  const here = frames[frame];
  if (here != null || everyFrames === 1) return here ?? null;
  const looked = (step: 1 | -1): number | null => {
    for (let away = 1; away < everyFrames; away += 1) if (frames[frame + step * away] != null) return away;
    return null;
  };
  const [back, on] = [looked(-1), looked(1)];
  const [before, after] = [frames[frame - (back ?? 0)], frames[frame + (on ?? 0)]];
  if (back === null || on === null || before == null || after == null) return null;
  const share = back / (back + on);
  return before.map((one, index) => between(one, after[index] ?? one, share));
}

const between = (one: Sighting, other: Sighting, share: number): Sighting => ({
  xPx: one.xPx + share * (other.xPx - one.xPx),
  yPx: one.yPx + share * (other.yPx - one.yPx),
  confidence: Math.min(one.confidence, other.confidence),
});
