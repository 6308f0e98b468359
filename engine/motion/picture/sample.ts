import type { GreyPicture } from './picture.ts';

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
