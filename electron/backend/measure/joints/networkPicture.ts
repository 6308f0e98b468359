import type { WayUp } from './bodies.ts';
import { type Crop, colourCrop, type Size } from './resample.ts';

/** A picture as the decoder gives it: planar 4:2:0, the grey plane, then the two colour differences. */
export type Picture = { readonly bytes: Uint8Array<ArrayBuffer>; readonly size: Size };

/** A square part of a picture as a network takes it: red, green and blue, the chosen way up. */
export function networkPicture({ bytes, size }: Picture, crop: Crop, side: number, wayUp: WayUp): Int32Array {
  const rgb = colourCrop(bytes, size, crop, side);
  return wayUp === 'upright' ? rgb : turnedOver(rgb);
}

/** The picture turned by half a circle: its pixels in reverse order. */
function turnedOver(rgb: Int32Array): Int32Array {
  const out = new Int32Array(rgb.length);
  for (let from = 0; from < rgb.length; from += 3) {
    const to = rgb.length - 3 - from;
    for (let colour = 0; colour < 3; colour += 1) out[to + colour] = rgb[from + colour] ?? 0;
  }
  return out;
}
