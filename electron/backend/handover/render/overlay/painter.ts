import type { SKRSContext2D } from '@napi-rs/canvas';
import type { PictureSize } from '../../../media/probe/streams.ts';
import { openFaces } from './faces.ts';
import { type Layer, type LumaWeights, layerOf } from './layer.ts';

/** What draws: a canvas context in pixels of the picture that is made. */
export type Pen = SKRSContext2D;

/** A stretch of the picture that drawing stays within. */
export type Bounds = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

export type Painter = {
  readonly size: PictureSize;
  /** Thickness to draw in: 1 for a picture whose shorter side has 480 pixels. */
  readonly unit: number;
  /** For measuring text. */
  readonly pen: Pen;
  /** Draws within bounds on nothing, and gives it as a layer; null when the bounds lie outside of the picture. */
  readonly paint: (bounds: Bounds, draw: (pen: Pen) => void) => Layer | null;
};

/**
 * Opens a painter for pictures of an even size, with faces for the words that it is to draw. One sheet serves every layer, so
 * memory doesn't grow with their number.
 */
export async function openPainter(size: PictureSize, weights: LumaWeights, words: string): Promise<Painter> {
  // Thirty megabytes that only a handover needs.
  const { createCanvas, GlobalFonts } = await import('@napi-rs/canvas');
  const pen = createCanvas(size.width, size.height).getContext('2d');
  await openFaces(pen, GlobalFonts, words);
  pen.lineCap = 'round';
  pen.lineJoin = 'round';
  return {
    size,
    unit: Math.max(0.75, Math.min(size.width, size.height) / 480),
    pen,
    paint: (bounds, draw) => {
      const left = 2 * Math.floor(Math.max(0, bounds.left) / 2);
      const top = 2 * Math.floor(Math.max(0, bounds.top) / 2);
      const width = 2 * Math.ceil(Math.min(size.width, bounds.right) / 2) - left;
      const height = 2 * Math.ceil(Math.min(size.height, bounds.bottom) / 2) - top;
      if (!(width > 0 && height > 0)) return null;
      pen.clearRect(left, top, width, height);
      pen.save();
      pen.beginPath();
      pen.rect(left, top, width, height);
      pen.clip();
      draw(pen);
      pen.restore();
      return layerOf(pen.getImageData(left, top, width, height).data, { left, top, width, height }, weights);
    },
  };
}

/** The whole picture. */
export const wholePicture = ({ width, height }: PictureSize): Bounds => ({
  left: 0,
  top: 0,
  right: width,
  bottom: height,
});

/** The bounds of some points with room around them; null without points. */
export function boundsAround(
  points: readonly { readonly x: number; readonly y: number }[],
  room: number,
): Bounds | null {
  if (points.length === 0) return null;
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  }
  return { left: left - room, top: top - room, right: right + room, bottom: bottom + room };
}
