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
