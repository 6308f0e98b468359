import { type FrameRange, holds } from '../framing/section.ts';
import type { CameraPath, DiscRecording, JointRecording, PointRecording, Recording } from './recording.ts';
import type { Warning } from './warnings.ts';

const some = <T>(items: readonly T[], { firstFrame, lastFrame }: FrameRange): T[] =>
  items.slice(firstFrame, lastFrame + 1);

function cameraOfFrames({ room, ...camera }: CameraPath, range: FrameRange): CameraPath {
  return {
    ...camera,
    frames: some(camera.frames, range),
    ...(room && { room: { ...room, frames: some(room.frames, range) } }),
  };
}

/** What was recorded of some frames alone, the first of them its first. */
export function recordingOfFrames({ disc, point, joints, camera, warnings }: Recording, range: FrameRange): Recording {
  return {
    disc: disc && {
      ...disc,
      frames: some(disc.frames, range),
      ...(disc.radiiPx && { radiiPx: some(disc.radiiPx, range) }),
      camera: cameraOfFrames(disc.camera, range),
    },
    point: point && { ...point, frames: some(point.frames, range), camera: cameraOfFrames(point.camera, range) },
    joints: joints && { ...joints, frames: some(joints.frames, range) },
    ...(camera !== undefined && { camera: camera && cameraOfFrames(camera, range) }),
    warnings: warnings.flatMap((one) => warningOfFrames(one, range)),
  };
}

/** A warning of one frame is told by the part's own count, and not where the part doesn't show it. */
function warningOfFrames(one: Warning, range: FrameRange): Warning[] {
  const { frame } = one.values;
  if (frame === undefined) return [one];
  return holds(range, frame) ? [{ ...one, values: { ...one.values, frame: frame - range.firstFrame } }] : [];
}

/** Where what was recorded of a part lies in its footage. */
export type PlaceInFootage = { readonly firstFrame: number; readonly frames: number };

/** Items of a part of the footage among all frames, `null` in those that were not looked at. */
function among<T>(items: readonly T[], { firstFrame, frames }: PlaceInFootage): (T | null)[] {
  return Array.from({ length: frames }, (_, frame) => items[frame - firstFrame] ?? null);
}

/** The camera stays as it was first and last seen where nobody looked. */
function stayingAmong<T>(items: readonly T[], { firstFrame, frames }: PlaceInFootage): T[] {
  if (items.length === 0) return [];
  return Array.from({ length: frames }, (_, frame) => {
    const nearest = items[Math.min(Math.max(0, frame - firstFrame), items.length - 1)];
    return nearest === undefined ? [] : [nearest];
  }).flat();
}

export function cameraInFootage({ room, ...camera }: CameraPath, place: PlaceInFootage): CameraPath {
  return {
    ...camera,
    frames: stayingAmong(camera.frames, place),
    ...(room && { room: { ...room, frames: stayingAmong(room.frames, place) } }),
  };
}

/** The disc of a part of the footage, one item a frame of all of it. */
export const discInFootage = (disc: DiscRecording, place: PlaceInFootage): DiscRecording => ({
  ...disc,
  frames: among(disc.frames, place),
  ...(disc.radiiPx && { radiiPx: among(disc.radiiPx, place) }),
  camera: cameraInFootage(disc.camera, place),
});

export const pointInFootage = (point: PointRecording, place: PlaceInFootage): PointRecording => ({
  ...point,
  frames: among(point.frames, place),
  camera: cameraInFootage(point.camera, place),
});

export const jointsInFootage = (joints: JointRecording, place: PlaceInFootage): JointRecording => ({
  ...joints,
  frames: among(joints.frames, place),
});
