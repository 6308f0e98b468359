import { type Crop, type Plane, resample } from './resample.ts';

export type Size = { readonly width: number; readonly height: number };

/** Planes of a picture whose bytes hold the grey plane, then the two colour differences at half width and height. */
function planesOf(bytes: Uint8Array, { width, height }: Size) {
  const half = { width: Math.ceil(width / 2), height: Math.ceil(height / 2) };
  const grey = width * height;
  const difference = half.width * half.height;
  const plane = (size: Size, start: number): Plane => ({
    ...size,
    data: bytes.subarray(start, start + size.width * size.height),
  });
  return {
    grey: plane({ width, height }, 0),
    blueDifference: plane(half, grey),
    redDifference: plane(half, grey + difference),
  };
}

const clamp = (value: number) => Math.max(0, Math.min(255, value));

/**
 * Part of a video picture as red, green and blue (0-255, three numbers a pixel, rows from the top), black beyond its edges. Colours by ITU-R
 * BT.709, limited range.
 *
 * @param bytes planar 4:2:0: the grey plane, then blue and red difference
 * @param side width and height of what is given
 */
export function colourCrop(bytes: Uint8Array, size: Size, crop: Crop, side: number): Int32Array {
  const { grey, blueDifference, redDifference } = planesOf(bytes, size);
  const half = { leftPx: crop.leftPx / 2, topPx: crop.topPx / 2, sidePx: crop.sidePx / 2 };
  const y = resample(grey, crop, side, 16);
  const u = resample(blueDifference, half, side, 128);
  const v = resample(redDifference, half, side, 128);
  const rgb = new Int32Array(3 * side * side);
  for (let i = 0; i < y.length; i += 1) {
    const light = 1.16438 * ((y[i] ?? 16) - 16);
    const blue = (u[i] ?? 128) - 128;
    const red = (v[i] ?? 128) - 128;
    rgb[3 * i] = clamp(light + 1.79274 * red);
    rgb[3 * i + 1] = clamp(light - 0.21325 * blue - 0.53291 * red);
    rgb[3 * i + 2] = clamp(light + 2.1124 * blue);
  }
  return rgb;
}
