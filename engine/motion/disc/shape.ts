/** A disc seen in a picture, as an ellipse: centre and half its longest diameter in pixels. */
export type DiscShape = {
  readonly xPx: number;
  readonly yPx: number;
  readonly radiusPx: number;
  /** Shortest diameter / longest. */
  readonly axisRatio: number;
  /** Direction of the longest diameter, radians clockwise from the x axis. */
  readonly majorAxisRad: number;
};

/** How far the rim is from the centre in a direction, in pixels. */
export function rimPx({ radiusPx, axisRatio, majorAxisRad }: DiscShape, directionRad: number): number {
  if (axisRatio === 1) return radiusPx;
  const across = Math.sin(directionRad - majorAxisRad) / axisRatio;
  const along = Math.cos(directionRad - majorAxisRad);
  return radiusPx / Math.sqrt(along * along + across * across);
}

/** A round disc at a place. */
export const roundDisc = (xPx: number, yPx: number, radiusPx: number): DiscShape => ({
  xPx,
  yPx,
  radiusPx,
  axisRatio: 1,
  majorAxisRad: 0,
});

/** Below this ratio (seen from more than 18° beside its axis) a disc is fitted with axes of its own, picture by picture. */
export const obliqueBelow = 0.95;

/** Whether a disc is seen so far from beside its axis that it is an ellipse to the eye. */
export const isOblique = ({ axisRatio }: Pick<DiscShape, 'axisRatio'>): boolean => axisRatio < obliqueBelow;

/** Whether one disc lies within another, or is the same. */
export function liesWithin(one: DiscShape, other: DiscShape): boolean {
  const apart = Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx);
  return apart + one.radiusPx <= other.radiusPx * 1.08;
}

/**
 * The steps across and down, in pixels, from the centre to the rim for each of so many even turns about the disc's own axis
 * (as the disc is turned in space, not in the picture), each with the direction in which the rim faces there.
 */
export type Spokes = {
  readonly across: Float64Array;
  readonly down: Float64Array;
  readonly facesAcross: Float64Array;
  readonly facesDown: Float64Array;
};

/** The spokes of a disc whose rim is one pixel away along its longest diameter. */
export function spokesOf({ axisRatio, majorAxisRad }: DiscShape, count: number): Spokes {
  const spokes = {
    across: new Float64Array(count),
    down: new Float64Array(count),
    facesAcross: new Float64Array(count),
    facesDown: new Float64Array(count),
  };
  const majorX = Math.cos(majorAxisRad);
  const majorY = Math.sin(majorAxisRad);
  for (let spoke = 0; spoke < count; spoke += 1) {
    const turnRad = (2 * Math.PI * spoke) / count;
    const along = Math.cos(turnRad);
    const over = Math.sin(turnRad);
    const size = Math.hypot(along * axisRatio, over);
    spokes.across[spoke] = along * majorX - over * axisRatio * majorY;
    spokes.down[spoke] = along * majorY + over * axisRatio * majorX;
    spokes.facesAcross[spoke] = (along * axisRatio * majorX - over * majorY) / size;
    spokes.facesDown[spoke] = (along * axisRatio * majorY + over * majorX) / size;
  }
  return spokes;
}
