import type { Box, CoverLook } from '../../../../../engine/covers/cover.ts';
import type { PictureSize } from '../../../media/probe/streams.ts';
import { type Plane, planesOf } from './layer.ts';

/** Squares along the longer side of a mosaic. It promises nothing: only the filled box hides for certain. */
const mosaicSquares = 4;
/** Dark, and no colour; in limited range. */
const dark = { luma: 22, chroma: 128 };

/** Makes what lies under a box unrecognisable, in the bytes of a `yuv420p` picture of that size. */
export function coverPlanes(bytes: Uint8Array, size: PictureSize, box: Box, look: CoverLook): void {
  // Outwards to even pixels, so that no half-covered colour is left at the rim.
  const left = 2 * Math.floor(Math.max(0, box.leftPx) / 2);
  const top = 2 * Math.floor(Math.max(0, box.topPx) / 2);
  const right = 2 * Math.ceil(Math.min(size.width, box.leftPx + box.widthPx) / 2);
  const bottom = 2 * Math.ceil(Math.min(size.height, box.topPx + box.heightPx) / 2);
  if (right <= left || bottom <= top) return;
  const square = 2 * Math.ceil(Math.max(right - left, bottom - top) / mosaicSquares / 2);
  const { luma, blueDifference, redDifference } = planesOf(bytes, size);
  for (const plane of [luma, blueDifference, redDifference]) {
    const scale = plane === luma ? 1 : 2;
    const edges = { left: left / scale, top: top / scale, right: right / scale, bottom: bottom / scale };
    if (look === 'filled') fill(plane, edges, plane === luma ? dark.luma : dark.chroma);
    else mosaic(plane, edges, square / scale);
  }
}

type Edges = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

function fill({ data, width }: Plane, { left, top, right, bottom }: Edges, value: number): void {
  for (let row = top; row < bottom; row += 1) data.fill(value, row * width + left, row * width + right);
}

function mosaic(plane: Plane, { left, top, right, bottom }: Edges, square: number): void {
  for (let row = top; row < bottom; row += square) {
    for (let column = left; column < right; column += square) {
      const edges = {
        left: column,
        top: row,
        right: Math.min(right, column + square),
        bottom: Math.min(bottom, row + square),
      };
      fill(plane, edges, Math.round(meanOf(plane, edges)));
    }
  }
}

function meanOf({ data, width }: Plane, { left, top, right, bottom }: Edges): number {
  let sum = 0;
  for (let row = top; row < bottom; row += 1) {
    for (let index = row * width + left; index < row * width + right; index += 1) sum += data[index] ?? 0;
  }
  return sum / ((right - left) * (bottom - top));
}
