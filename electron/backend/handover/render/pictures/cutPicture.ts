import type { PictureSize } from '../../../media/probe/streams.ts';
import { type Plane, planarBytes, planesOf } from '../overlay/layer.ts';
import type { Bounds } from '../overlay/painter.ts';

/** A part of a picture: where it begins, and its size; all of it even. */
export type Cut = PictureSize & { readonly left: number; readonly top: number };

/** The part of a picture of an even size that covers some bounds, as near as even pixels come. */
export function evenCut({ left, top, right, bottom }: Bounds, size: PictureSize): Cut {
  const from = { left: 2 * Math.floor(left / 2), top: 2 * Math.floor(top / 2) };
  return {
    ...from,
    width: Math.min(size.width, 2 * Math.ceil(right / 2)) - from.left,
    height: Math.min(size.height, 2 * Math.ceil(bottom / 2)) - from.top,
  };
}

/** The bytes of a part of a `yuv420p` picture. */
export function cutPicture(bytes: Uint8Array, size: PictureSize, cut: Cut): Uint8Array {
  const made = new Uint8Array(planarBytes(cut));
  const [from, to] = [planesOf(bytes, size), planesOf(made, cut)];
  copyRows(from.luma, to.luma, cut);
  const half = { left: cut.left / 2, top: cut.top / 2 };
  copyRows(from.blueDifference, to.blueDifference, half);
  copyRows(from.redDifference, to.redDifference, half);
  return made;
}

function copyRows(from: Plane, to: Plane, { left, top }: { readonly left: number; readonly top: number }): void {
  for (let row = 0; row < to.height; row += 1) {
    const start = (top + row) * from.width + left;
    to.data.set(from.data.subarray(start, start + to.width), row * to.width);
  }
}
