import type { Crop, Framing, TurnDeg } from './framing.ts';

type Size = { readonly width: number; readonly height: number };
type Point = { readonly x: number; readonly y: number };

/** The size of a picture after a turn. */
export function turnedSize({ width, height }: Size, turnDeg: TurnDeg): Size {
  return turnDeg === 90 || turnDeg === 270 ? { width: height, height: width } : { width, height };
}

/** Where a point of a picture of some size lies once the picture is turned. */
export function turnedPoint({ x, y }: Point, { width, height }: Size, turnDeg: TurnDeg): Point {
  switch (turnDeg) {
    case 0:
      return { x, y };
    case 90:
      return { x: height - y, y: x };
    case 180:
      return { x: width - x, y: height - y };
    case 270:
      return { x: y, y: width - x };
  }
}

/** Edges of a rectangle within a picture. */
export type Edges = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/** A rectangle of a picture of some size once the picture is turned. */
export function turnedEdges({ left, top, right, bottom }: Edges, size: Size, turnDeg: TurnDeg): Edges {
  return edgesThrough(
    turnedPoint({ x: left, y: top }, size, turnDeg),
    turnedPoint({ x: right, y: bottom }, size, turnDeg),
  );
}

const edgesThrough = (one: Point, other: Point): Edges => ({
  left: Math.min(one.x, other.x),
  top: Math.min(one.y, other.y),
  right: Math.max(one.x, other.x),
  bottom: Math.max(one.y, other.y),
});

/** What is seen of an upright picture: a part of it, as it is or as in a mirror. */
export type SeenPart = Edges & { readonly mirrored: boolean };

/**
 * The part of an upright picture that is seen. Its edges are even, outwards, so that no pixel of video is cut in two; a crop that
 * no longer lies in the picture is none.
 */
export function seenPart({ width, height }: Size, { crop, mirrored }: Pick<Framing, 'crop' | 'mirrored'>): SeenPart {
  const whole = { left: 0, top: 0, right: width, bottom: height, mirrored };
  if (crop === null) return whole;
  const left = 2 * Math.floor(crop.leftPx / 2);
  const top = 2 * Math.floor(crop.topPx / 2);
  const right = Math.min(width, 2 * Math.ceil((crop.leftPx + crop.widthPx) / 2));
  const bottom = Math.min(height, 2 * Math.ceil((crop.topPx + crop.heightPx) / 2));
  return right - left < 2 || bottom - top < 2 ? whole : { left, top, right, bottom, mirrored };
}

/** The size of what is seen. */
export const seenSize = ({ left, top, right, bottom }: SeenPart): Size => ({
  width: right - left,
  height: bottom - top,
});

/** Where a point of the upright picture lies in what is seen of it; outside of that for what is cut off. */
export function seenPoint({ left, top, right, mirrored }: SeenPart, { x, y }: Point): Point {
  return { x: mirrored ? right - x : x - left, y: y - top };
}

/** Where a point of what is seen lies in the upright picture. */
export function uprightPoint({ left, top, right, mirrored }: SeenPart, { x, y }: Point): Point {
  return { x: mirrored ? right - x : x + left, y: y + top };
}

/** A rectangle of the upright picture in what is seen of it. */
export function seenEdges(part: SeenPart, { left, top, right, bottom }: Edges): Edges {
  return edgesThrough(seenPoint(part, { x: left, y: top }), seenPoint(part, { x: right, y: bottom }));
}

/** The part of a picture that is shown, once the picture is turned. */
export function turnedCrop(crop: Crop, size: Size, turnDeg: TurnDeg): Crop {
  const edges = {
    left: crop.leftPx,
    top: crop.topPx,
    right: crop.leftPx + crop.widthPx,
    bottom: crop.topPx + crop.heightPx,
  };
  const { left, top, right, bottom } = turnedEdges(edges, size, turnDeg);
  return { leftPx: Math.max(0, left), topPx: Math.max(0, top), widthPx: right - left, heightPx: bottom - top };
}
