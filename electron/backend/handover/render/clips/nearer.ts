import type { Nearness } from '../../../../../engine/narration/narration.ts';
import type { PictureSize } from '../../../media/probe/streams.ts';
import { type Plane, planesOf } from '../overlay/layer.ts';

/**
 * Shows a part of a picture as large as the whole: `near` in pixels of a picture of the size `shown`, of which `from` holds the `yuv420p` planes in
 * an even size. The part stays within the picture.
 */
export function nearer(
  from: Uint8Array,
  into: Uint8Array,
  { size, shown, near }: { readonly size: PictureSize; readonly shown: PictureSize; readonly near: Nearness },
): void {
  const source = planesOf(from, size);
  const target = planesOf(into, size);
  const left = leftEdge(near.x / shown.width, near.scale);
  const top = leftEdge(near.y / shown.height, near.scale);
  for (const plane of ['luma', 'blueDifference', 'redDifference'] as const) {
    enlarge(source[plane], target[plane], { left, top, scale: near.scale });
  }
}

/** Where the part begins, as a share of the whole: its middle where it is asked for, unless it would leave the picture. */
const leftEdge = (middle: number, scale: number): number =>
  Math.min(Math.max(0, middle - 1 / (2 * scale)), 1 - 1 / scale);

/** Enlarges with the mean of the four nearest pixels, weighed by how near they are. */
function enlarge(
  from: Plane,
  into: Plane,
  { left, top, scale }: { readonly left: number; readonly top: number; readonly scale: number },
): void {
  const { width, height } = from;
  const columns = neighbours(width, left * width, scale);
  const rows = neighbours(height, top * height, scale);
  for (let row = 0; row < height; row += 1) {
    const upper = (rows.first[row] ?? 0) * width;
    const lower = (rows.second[row] ?? 0) * width;
    const down = rows.share[row] ?? 0;
    for (let column = 0; column < width; column += 1) {
      const [one, other] = [columns.first[column] ?? 0, columns.second[column] ?? 0];
      const right = columns.share[column] ?? 0;
      const above = (from.data[upper + one] ?? 0) * (1 - right) + (from.data[upper + other] ?? 0) * right;
      const below = (from.data[lower + one] ?? 0) * (1 - right) + (from.data[lower + other] ?? 0) * right;
      into.data[row * width + column] = Math.round(above * (1 - down) + below * down);
    }
  }
}

/** For each pixel of the larger picture the two of the smaller one that it lies between, and how near it is to the second. */
function neighbours(length: number, start: number, scale: number) {
  const first = new Int32Array(length);
  const second = new Int32Array(length);
  const share = new Float32Array(length);
  for (let index = 0; index < length; index += 1) {
    const at = Math.min(Math.max(0, start + (index + 0.5) / scale - 0.5), length - 1);
    first[index] = Math.floor(at);
    second[index] = Math.min(length - 1, Math.floor(at) + 1);
    share[index] = at - Math.floor(at);
  }
  return { first, second, share };
}
