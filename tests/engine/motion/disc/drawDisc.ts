import type { GreyPicture } from '../../../../engine/motion/picture/picture.ts';
import { whiteNoise } from '../signal/whiteNoise.ts';

export type Size = { readonly width: number; readonly height: number };

/** A disc to draw: centre and half its longest diameter in pixels, first pixel's centre at (0.5, 0.5). */
export type DrawnDisc = {
  readonly xPx: number;
  readonly yPx: number;
  readonly radiusPx: number;
  /** Shortest diameter / longest, and the direction of the longest, degrees clockwise from the x axis. */
  readonly axisRatio?: number;
  readonly majorAxisDeg?: number;
  /** One brightness all over, in place of rings. */
  readonly plain?: number;
  /** What the parts of a pixel are averaged in: brightness on screen, or light, as in a camera. */
  readonly mixedIn?: 'brightness' | 'light';
};

/** An upright bar in front of everything, from one column to another. */
export type Post = { readonly fromPx: number; readonly toPx: number };

/** Rings by their outer radius as a share of the rim's: hub, dark plate, light ring, dark lip. */
const rings = [
  { upTo: 0.12, brightness: 190 },
  { upTo: 0.76, brightness: 52 },
  { upTo: 0.84, brightness: 215 },
  { upTo: 1, brightness: 45 },
] as const;

/** Samples a side that a pixel's brightness is the mean of. */
const samples = 6;

/** A number in 0-1 that belongs to a place of a lattice. */
function lattice(column: number, row: number, seed: number): number {
  let state = (Math.imul(column, 374761393) + Math.imul(row, 668265263) + Math.imul(seed, 974634211)) >>> 0;
  state = Math.imul(state ^ (state >>> 13), 1274126177) >>> 0;
  return ((state ^ (state >>> 16)) >>> 0) / 2 ** 32;
}

/** Smooth brightness between the places of a lattice, 0-1. */
function cloud(x: number, y: number, seed: number): number {
  const column = Math.floor(x);
  const row = Math.floor(y);
  const ease = (share: number) => share * share * (3 - 2 * share);
  const right = ease(x - column);
  const below = ease(y - row);
  const upper = lattice(column, row, seed) * (1 - right) + lattice(column + 1, row, seed) * right;
  const lower = lattice(column, row + 1, seed) * (1 - right) + lattice(column + 1, row + 1, seed) * right;
  return upper * (1 - below) + lower * below;
}

/** Brightness of a textured wall at a place: coarse and fine clouds, 80-190. */
export const wallAt = (xPx: number, yPx: number, seed = 1): number =>
  80 + 70 * cloud(xPx / 23, yPx / 23, seed) + 40 * cloud(xPx / 7, yPx / 7, seed + 1);

/** A picture of the brightness at the middle of each pixel. */
export function drawn({ width, height }: Size, brightnessAt: (xPx: number, yPx: number) => number): GreyPicture {
  const data = new Uint8Array(width * height);
  for (let row = 0; row < height; row += 1) {
    for (let column = 0; column < width; column += 1) {
      data[row * width + column] = Math.round(Math.min(255, Math.max(0, brightnessAt(column + 0.5, row + 0.5))));
    }
  }
  return { width, height, data };
}

/** A room with a textured wall and nothing else. */
export const room = (size: Size, seed = 1): GreyPicture => drawn(size, (xPx, yPx) => wallAt(xPx, yPx, seed));

/** A room of one brightness. */
export const blank = (size: Size, brightness: number): GreyPicture => drawn(size, () => brightness);

/** The picture with discs in it, one over the other, and posts in front. */
export function withDiscs(
  { width, height, data }: GreyPicture,
  discs: readonly DrawnDisc[],
  posts: readonly Post[] = [],
): GreyPicture {
  const copy = { width, height, data: Uint8Array.from(data) };
  for (const disc of discs) drawDisc(copy, disc);
  for (const post of posts) drawPost(copy, post);
  return copy;
}

function drawDisc({ width, height, data }: GreyPicture, disc: DrawnDisc): void {
  const { xPx, yPx, radiusPx } = disc;
  // Light is about the 2.2nd power of brightness (BT.1886).
  const power = disc.mixedIn === 'light' ? 2.2 : 1;
  for (let row = Math.max(0, Math.floor(yPx - radiusPx)); row < Math.min(height, yPx + radiusPx + 1); row += 1) {
    for (
      let column = Math.max(0, Math.floor(xPx - radiusPx));
      column < Math.min(width, xPx + radiusPx + 1);
      column += 1
    ) {
      const here = row * width + column;
      const behind = data[here] ?? 0;
      let sum = 0;
      for (let sample = 0; sample < samples * samples; sample += 1) {
        const x = column + ((sample % samples) + 0.5) / samples;
        const y = row + (Math.floor(sample / samples) + 0.5) / samples;
        sum += (brightnessOf(disc, x, y) ?? behind) ** power;
      }
      data[here] = Math.round((sum / (samples * samples)) ** (1 / power));
    }
  }
}

function brightnessOf(
  { xPx, yPx, radiusPx, axisRatio = 1, majorAxisDeg = 0, plain }: DrawnDisc,
  x: number,
  y: number,
): number | undefined {
  const turn = (majorAxisDeg * Math.PI) / 180;
  const along = (x - xPx) * Math.cos(turn) + (y - yPx) * Math.sin(turn);
  const across = ((y - yPx) * Math.cos(turn) - (x - xPx) * Math.sin(turn)) / axisRatio;
  const share = Math.hypot(along, across) / radiusPx;
  if (plain !== undefined) return share <= 1 ? plain : undefined;
  return rings.find(({ upTo }) => share <= upTo)?.brightness;
}

function drawPost({ width, height, data }: GreyPicture, { fromPx, toPx }: Post): void {
  for (let row = 0; row < height; row += 1) {
    for (let column = Math.max(0, Math.floor(fromPx)); column < Math.min(width, Math.ceil(toPx)); column += 1) {
      const covered = Math.min(toPx, column + 1) - Math.max(fromPx, column);
      const here = row * width + column;
      data[here] = Math.round((data[here] ?? 0) * (1 - covered) + 150 * covered);
    }
  }
}

/** The picture with white noise of a standard deviation on it. */
export function noisy({ width, height, data }: GreyPicture, deviation: number, seed: number): GreyPicture {
  const noise = whiteNoise(data.length, seed);
  const grainy = data.map((value, index) =>
    Math.round(Math.min(255, Math.max(0, value + deviation * (noise[index] ?? 0)))),
  );
  return { width, height, data: grainy };
}
