/** Metres per pixel from a length seen in the plane of the movement. */
export const metresPerPixel = (seen: { readonly lengthM: number; readonly lengthPx: number }): number =>
  seen.lengthM / seen.lengthPx;

/** Relative error of the scale for every pixel by which its length is marked wrong. */
export const scaleErrorPerPixel = (lengthPx: number): number => 1 / lengthPx;

/**
 * Uncertainty of a depth (hip crease over top of the knee) in metres: two pixels of marking, the shift between the two
 * points' planes, and 20 mm for choosing the landmarks (chosen here, no source).
 */
export function depthUncertaintyM(from: { readonly metresPerPixel: number; readonly shiftM: number }): number {
  return Math.hypot(2 * from.metresPerPixel, from.shiftM, 0.02);
}
