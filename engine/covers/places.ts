import type { Box, CoverPlace } from './cover.ts';

/** Rising places with one more; it takes the place of an earlier one at its frame. */
export function withPlace(places: readonly CoverPlace[], place: CoverPlace): CoverPlace[] {
  return [...withoutPlace(places, place.frame), place].sort((one, other) => one.frame - other.frame);
}

/** The places without the one at a frame. */
export const withoutPlace = (places: readonly CoverPlace[], frame: number): CoverPlace[] =>
  places.filter((place) => place.frame !== frame);

/** Whether any of a box lies within a picture. */
export const meetsPicture = (
  { leftPx, topPx, widthPx, heightPx }: Box,
  { width, height }: { readonly width: number; readonly height: number },
): boolean => leftPx < width && topPx < height && leftPx + widthPx > 0 && topPx + heightPx > 0;
