/** One upright picture in shades of grey, rows from the top: pixel (column, row) is `data[row × width + column]`, 0-255. */
export type GreyPicture = { readonly width: number; readonly height: number; readonly data: Uint8Array };

/**
 * Brightness (0-255) between pixels, linear between the four neighbours' centres; beyond the edge the edge's own. The
 * first pixel's centre is (0.5, 0.5).
 */
export function brightnessAt({ width, height, data }: GreyPicture, xPx: number, yPx: number): number {
  const x = Math.min(Math.max(xPx - 0.5, 0), width - 1.001);
  const y = Math.min(Math.max(yPx - 0.5, 0), height - 1.001);
  const column = x | 0;
  const row = y | 0;
  const right = x - column;
  const down = y - row;
  const at = row * width + column;
  const upper = (data[at] ?? 0) * (1 - right) + (data[at + 1] ?? 0) * right;
  const lower = (data[at + width] ?? 0) * (1 - right) + (data[at + width + 1] ?? 0) * right;
  return upper * (1 - down) + lower * down;
}

/** Whether a place lies within the picture. */
export function isInside({ width, height }: GreyPicture, xPx: number, yPx: number): boolean {
  return xPx >= 0.5 && yPx >= 0.5 && xPx <= width - 0.5 && yPx <= height - 0.5;
}

/** The picture made smaller by a factor, by averaging. */
export function shrink({ width, height, data }: GreyPicture, factor: number): GreyPicture {
  if (factor === 1) return { width, height, data };
  const smallWidth = Math.floor(width / factor);
  const smallHeight = Math.floor(height / factor);
  const small = new Uint8Array(smallWidth * smallHeight);
  const lefts = columnsOf(smallWidth, factor);
  // Each pixel then stands for one or two rows and columns: their corners are all of it.
  if (factor <= 2) {
    for (let row = 0; row < smallHeight; row += 1) {
      const top = Math.floor(row * factor);
      const upper = top * width;
      const lower = Math.max(top, Math.floor((row + 1) * factor) - 1) * width;
      for (let column = 0; column < smallWidth; column += 1) {
        const left = lefts[column] ?? 0;
        const right = Math.max(left, (lefts[column + 1] ?? 0) - 1);
        const sum =
          (data[upper + left] ?? 0) +
          (data[upper + right] ?? 0) +
          (data[lower + left] ?? 0) +
          (data[lower + right] ?? 0);
        small[row * smallWidth + column] = sum / 4;
      }
    }
    return { width: smallWidth, height: smallHeight, data: small };
  }
  const sums = new Int32Array(width);
  for (let row = 0; row < smallHeight; row += 1) {
    const top = Math.floor(row * factor);
    const bottom = Math.max(top + 1, Math.floor((row + 1) * factor));
    sums.fill(0);
    for (let y = top; y < bottom; y += 1) {
      const line = y * width;
      for (let x = 0; x < width; x += 1) sums[x] = (sums[x] ?? 0) + (data[line + x] ?? 0);
    }
    for (let column = 0; column < smallWidth; column += 1) {
      const left = lefts[column] ?? 0;
      const right = Math.max(left + 1, lefts[column + 1] ?? left + 1);
      let sum = 0;
      for (let x = left; x < right; x += 1) sum += sums[x] ?? 0;
      small[row * smallWidth + column] = sum / ((bottom - top) * (right - left));
    }
  }
  return { width: smallWidth, height: smallHeight, data: small };
}

/** The first column of each column of the smaller picture, and that after the last. */
const columnsOf = (smallWidth: number, factor: number): Int32Array =>
  Int32Array.from({ length: smallWidth + 1 }, (_, column) => Math.floor(column * factor));
