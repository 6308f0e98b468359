import { expect, it } from 'vitest';
import { type Body, jointNames } from '../../../../engine/recording/recording.ts';
import { bodyAt, skeletonOf } from '../../../../renderer/review/layers/skeleton.ts';

/** Every joint on a place of its own; those named are less sure. */
const body = (unsure: readonly string[] = [], shiftPx = 0): Body =>
  jointNames.map((name, place) => ({
    xPx: place * 10 + shiftPx,
    yPx: place * 20,
    confidence: unsure.some((word) => name.startsWith(word)) ? 0.1 : 0.9,
  }));

it('draws the near side from ankle to wrist, and the head on the shoulder', () => {
  const { joints, bones } = skeletonOf(body(), 'left', null);
  expect(joints.map(({ name }) => name)).toEqual([
    'leftAnkle',
    'leftKnee',
    'leftHip',
    'leftShoulder',
    'leftElbow',
    'leftWrist',
    'leftEar',
  ]);
  expect(bones.map(({ from, to }) => `${from.name}-${to.name}`)).toEqual([
    'leftAnkle-leftKnee',
    'leftKnee-leftHip',
    'leftHip-leftShoulder',
    'leftShoulder-leftElbow',
    'leftElbow-leftWrist',
    'leftShoulder-leftEar',
  ]);
  expect(joints.every(({ sight }) => sight === 'seen')).toBe(true);
});

it('calls a joint a guess where the network is not sure of it', () => {
  const { joints } = skeletonOf(body(['rightKnee']), 'right', null);
  expect(joints.filter(({ sight }) => sight === 'guessed').map(({ name }) => name)).toEqual(['rightKnee']);
});

it('calls a joint behind the disc a guess, however sure the network is', () => {
  const elbow = body()[jointNames.indexOf('rightElbow')];
  const disc = { at: { xPx: elbow?.xPx ?? 0, yPx: elbow?.yPx ?? 0 }, radiusPx: 5 };
  const { joints } = skeletonOf(body(), 'right', disc);
  expect(joints.filter(({ sight }) => sight === 'guessed').map(({ name }) => name)).toEqual(['rightElbow']);
});

it('takes the surer side where the near one is not known', () => {
  expect(skeletonOf(body(['left']), null, null).joints[0]?.name).toBe('rightAnkle');
  expect(skeletonOf(body(['right']), null, null).joints[0]?.name).toBe('leftAnkle');
});

it('fills in only between two frames that were looked at', () => {
  const joints = { method: 'any', everyFrames: 2, frames: [body(), null, body([], 4), null, null] };
  expect(bodyAt(joints, 0)?.[3]?.xPx).toBe(30);
  expect(bodyAt(joints, 1)?.[3]?.xPx).toBe(32);
  expect(bodyAt(joints, 3)).toBeNull();
  expect(bodyAt({ ...joints, everyFrames: 1 }, 1)).toBeNull();
});
