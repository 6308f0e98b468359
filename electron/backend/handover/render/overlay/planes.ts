import type { PictureSize } from '../../../media/probe/upright.ts';

/** One plane of a picture, rows from the top. */
export type Plane = { readonly data: Uint8Array; readonly width: number; readonly height: number };

export type Planes = { readonly luma: Plane; readonly blueDifference: Plane; readonly redDifference: Plane };

/** Bytes of a `yuv420p` picture of an even size. */
export const planarBytes = ({ width, height }: PictureSize): number => (width * height * 3) / 2;

/** The planes of a `yuv420p` picture of an even size: views of its bytes. */
export function planesOf(bytes: Uint8Array, { width, height }: PictureSize): Planes {
  const whole = width * height;
  const quarter = whole / 4;
  const half = { width: width / 2, height: height / 2 };
  return {
    luma: { data: bytes.subarray(0, whole), width, height },
    blueDifference: { data: bytes.subarray(whole, whole + quarter), ...half },
    redDifference: { data: bytes.subarray(whole + quarter, whole + 2 * quarter), ...half },
  };
}
