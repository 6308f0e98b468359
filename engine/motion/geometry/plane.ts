const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const degrees = (angle: number): number => (angle * 180) / Math.PI;

/** From where on a turned camera is told, and from where on sideways measures are refused (chosen here, no source). */
export const offAxisLimitsDeg = { warn: 10, refuse: 20 } as const;

/** How far a camera is turned from a disc's axis, from its outline's shortest / longest diameter (0-1), in degrees. */
export function offAxisDeg(axisRatio: number): number {
  return degrees(Math.acos(Math.min(1, Math.max(0, axisRatio))));
}

/**
 * Seen / true length sideways under a camera turned about the upright by `yawDeg`: its cosine; divide by it to correct.
 * Upright lengths stay as they are, to first order.
 */
export const sidewaysShare = (yawDeg: number): number => Math.cos(radians(yawDeg));

/** Where something lies seen from the camera: the calibrated plane's distance, and how far behind that plane it is (− = nearer). */
export type OutOfPlane = { readonly cameraDistanceM: number; readonly behindM: number };

/** Measured / true length of something out of the calibrated plane: D / (D + d). */
export const outOfPlaneShare = ({ cameraDistanceM, behindM }: OutOfPlane): number =>
  cameraDistanceM / (cameraDistanceM + behindM);

/** How far something out of the calibrated plane seems shifted upwards, in metres; `aboveAxisM` = its height over the lens axis. */
export const outOfPlaneShiftM = (place: OutOfPlane & { readonly aboveAxisM: number }): number =>
  place.aboveAxisM * outOfPlaneShare(place) - place.aboveAxisM;

/** Sideways drift in metres that a rolled camera makes out of an upright movement. */
export const rollDriftM = (movement: { readonly heightChangeM: number; readonly rollDeg: number }): number =>
  movement.heightChangeM * Math.tan(radians(movement.rollDeg));
