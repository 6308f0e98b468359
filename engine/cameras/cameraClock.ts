/** Media times are of the clip's own clock; a slow-motion clip's clock runs slower than the lift. */
export type CameraClock = { readonly realTimeFactor: number };

/**
 * How much later a moment stands on one camera's clock than on the other's, in microseconds of real time, from the same moment
 * in media microseconds on both.
 */
export function offsetBetween(
  { us: leadUs, realTimeFactor: leadFactor }: CameraClock & { readonly us: number },
  { us, realTimeFactor }: CameraClock & { readonly us: number },
): number {
  return Math.round(us / realTimeFactor - leadUs / leadFactor);
}

/** A camera of a set: its clock, and how much later a moment stands on it than on the lead's, in microseconds of real time (the lead's is 0). */
export type CameraOfSet = CameraClock & { readonly offsetUs: number };

/** A moment of one camera's clip on another's clock, both in media microseconds. */
export function acrossCameras(us: number, from: CameraOfSet, to: CameraOfSet): number {
  return Math.round((us / from.realTimeFactor - from.offsetUs + to.offsetUs) * to.realTimeFactor);
}
