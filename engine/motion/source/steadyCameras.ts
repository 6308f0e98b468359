import type { CameraPath, PointPx, Recording } from '../../recording/recording.ts';
import { cameraAt, floorNearness, type Nearness, type Room, standingNearness } from '../camera/atDepth.ts';
import { cameraOf, steadied } from '../camera/cameraPath.ts';
import { bodyHeightPx, leastConfidence } from '../joints/lifter.ts';
import { jointOf, medianPoint, type Side } from '../joints/points.ts';
import { feetCamera } from './feetCamera.ts';

/** A camera's path with its own movement known at the depth of one thing, and how far that may still be off. */
export type SteadyCamera = {
  readonly path: CameraPath | null;
  /** Standard deviation of what is left of the camera's movement at that thing, in pixels; 0 for a camera that stands. */
  readonly wanderPx: number;
};

/** Where lifters stand against most of the background, before anything is known. */
const usualLifter: Nearness = { value: 1.25, sd: 0.35 };
/** The ankle's height over the floor / standing height (Drillis & Contini 1966). */
const ankleHeight = 0.039;
/** An ankle that stands stays within this share of the lifter's height. */
const mostStray = 0.03;
/** Nobody knows the place of the sole, and the evenness of a floor, better than to this share. */
const floorShare = 0.03;
/** From the middle of the lifter out to the disc on a bar; full-size bars differ little (from memory). */
const discOutM = { value: 0.7, sd: 0.07 } as const;
/** A load in the hands, or a joint, is about as far away as the feet. */
const depthOfBodyM = 0.15;
/** People sway a camera in their hands by about this; what of it the background doesn't show, by its usual distance, stays. */
const swayM = 0.015;
const unseenOfSway = 0.45;
/** The network puts feet that stand elsewhere from posture to posture by about this. */
const feetM = 0.015;
/** A lifter's height in metres, where a length in pixels must be told in metres roughly. */
const usualHeightM = 1.7;

/** How the camera moved at the depth of what may be followed: the body, and a disc far out on the bar. */
export type SteadyCameras = { readonly body: SteadyCamera; readonly disc: SteadyCamera };

/** Finds both. A point that was clicked may be anywhere about the body. */
export function steadyCameras(
  recording: Recording,
  { timesS, discDiameterM }: { readonly timesS: readonly number[]; readonly discDiameterM: number },
): SteadyCameras {
  const camera = cameraOf(recording);
  if (!camera?.moves) return { body: { path: camera, wanderPx: 0 }, disc: { path: camera, wanderPx: 0 } };
  const { room } = camera;
  const heightPx = recording.joints && bodyHeightPx(recording.joints);
  const { disc } = recording;
  const discPx = disc && (disc.outline.radiusPx * 2) / discDiameterM;
  const pxPerM = discPx ?? (heightPx ?? 0) / usualHeightM;
  if (!room || !camera.removable) {
    const left = { path: camera, wanderPx: swayM * (camera.removable ? unseenOfSway : 1) * pxPerM };
    const byFeet = camera.removable ? null : feetCamera(recording, camera, timesS);
    return { body: byFeet ? { path: byFeet, wanderPx: feetM * pxPerM } : left, disc: left };
  }
  const feet = lifterNearness(recording, room, { camera, timesS, heightPx });
  const body = { value: feet.value, sd: Math.hypot(feet.sd, (feet.value * depthOfBodyM * pxPerM) / room.focalPx) };
  const bodyCamera = {
    path: cameraAt(camera, body.value, bodyPlaces(recording)),
    wanderPx: wanderOf(room, body.sd),
  };
  if (!disc) return { body: bodyCamera, disc: bodyCamera };
  const onDisc = discNearness(feet, { distanceM: room.focalPx / (discPx ?? 1), axisRatio: disc.outline.axisRatio });
  return {
    body: bodyCamera,
    disc: { path: cameraAt(camera, onDisc.value, disc.frames), wanderPx: wanderOf(room, onDisc.sd) },
  };
}

/** A disc on a bar is nearer than the feet by as much as the bar comes towards the camera. */
function discNearness(
  feet: Nearness,
  { distanceM, axisRatio }: { readonly distanceM: number; readonly axisRatio: number },
): Nearness {
  const factor = 1 + (discOutM.value * axisRatio) / distanceM;
  return { value: feet.value * factor, sd: Math.hypot(feet.sd * factor, (feet.value * discOutM.sd) / distanceM) };
}

/** How near the lifter is: by the floor under the feet, and by how the camera's movement moves the ankles in the picture. */
function lifterNearness(
  { joints }: Recording,
  room: Room,
  {
    camera,
    timesS,
    heightPx,
  }: { readonly camera: CameraPath; readonly timesS: readonly number[]; readonly heightPx: number | null },
): Nearness {
  if (!joints || heightPx === null) return usualLifter;
  const ankles = (['left', 'right'] as const).map((side) => anklesOf(joints.frames, side));
  const standing = ankles.flatMap(
    (places) => standingNearness(room, places, { timesS, usual: usualLifter, mostStrayPx: mostStray * heightPx }) ?? [],
  );
  const feet = ankles.flatMap((places) => {
    const seen = places.flatMap((place, frame) => (place ? [steadied(camera, frame, place)] : []));
    return medianPoint(seen) ?? [];
  });
  const between = middleOf(feet);
  const floor = between && floorNearness(room, { xPx: between.xPx, yPx: between.yPx + ankleHeight * heightPx });
  const under = floor && { value: floor.value, sd: Math.hypot(floor.sd, floorShare * floor.value) };
  return together([meanOf(standing), under, usualLifter].filter((one) => one !== null));
}

function anklesOf(frames: NonNullable<Recording['joints']>['frames'], side: Side): (PointPx | null)[] {
  return frames.map((body) => {
    const ankle = body && jointOf(body, 'ankle', side);
    return ankle && ankle.confidence >= leastConfidence ? { xPx: ankle.xPx, yPx: ankle.yPx } : null;
  });
}

/** The middle of the lifter's seen joints, frame by frame. */
function bodyPlaces({ joints }: Recording): (PointPx | null)[] {
  return (joints?.frames ?? []).map((body) => {
    const seen = (body ?? []).filter(({ confidence }) => confidence >= leastConfidence);
    return medianPoint(seen);
  });
}

const middleOf = ([one, other]: readonly PointPx[]): PointPx | null =>
  one && other ? { xPx: (one.xPx + other.xPx) / 2, yPx: (one.yPx + other.yPx) / 2 } : (one ?? null);

/** The left and the right foot together: they are wrong in the same way. */
function meanOf(both: readonly Nearness[]): Nearness | null {
  if (both.length === 0) return null;
  const mean = (of: (one: Nearness) => number) => both.reduce((sum, one) => sum + of(one), 0) / both.length;
  return { value: mean(({ value }) => value), sd: mean(({ sd }) => sd) };
}

/** What several tell together, each by its sureness; where they contradict each other, none is that sure. */
function together(several: readonly Nearness[]): Nearness {
  const weights = several.map(({ sd }) => 1 / sd ** 2);
  const weight = weights.reduce((sum, one) => sum + one, 0);
  const value = several.reduce((sum, one, index) => sum + (weights[index] ?? 0) * one.value, 0) / weight;
  const contradiction = several.reduce((sum, one, index) => sum + (weights[index] ?? 0) * (one.value - value) ** 2, 0);
  return { value, sd: Math.sqrt(Math.max(1, contradiction / Math.max(1, several.length - 1)) / weight) };
}

/** What a doubt of nearness leaves of the camera's up and down, with what the patches themselves leave. */
function wanderOf({ frames, focalPx, spreadPx }: Room, nearnessSd: number): number {
  const downs = frames.map(({ shift }) => shift[1]);
  const mean = downs.reduce((sum, one) => sum + one, 0) / Math.max(1, downs.length);
  const spread = Math.sqrt(downs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / Math.max(1, downs.length));
  return Math.hypot(nearnessSd * focalPx * spread, spreadPx);
}
