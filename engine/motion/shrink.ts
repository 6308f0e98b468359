import type { GreyPicture } from './picture.ts';

/** The picture made smaller by a factor, by averaging. */
export function shrink({ width, height, data }: GreyPicture, factor: number): GreyPicture {
  if (factor === 1) return { width, height, data };
  const smallWidth = Math.floor(width / factor);
  const smallHeight = Math.floor(height / factor);
  const small = new Uint8Array(smallWidth * smallHeight);
  for (let row = 0; row < smallHeight; row += 1) {
    const top = Math.floor(row * factor);
    const bottom = Math.max(top + 1, Math.floor((row + 1) * factor));
    for (let column = 0; column < smallWidth; column += 1) {
      const left = Math.floor(column * factor);
      const right = Math.max(left + 1, Math.floor((column + 1) * factor));
      let sum = 0;
      for (let y = top; y < bottom; y += 1) for (let x = left; x < right; x += 1) sum += data[y * width + x] ?? 0;
      small[row * smallWidth + column] = sum / ((bottom - top) * (right - left));
    }
  }
  return { width: smallWidth, height: smallHeight, data: small };
}
