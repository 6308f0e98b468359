/**
 * The size half-way between the highest and the lowest point: a camera that looks down or up at the lifter shows the disc
 * larger at one end of its travel than at the other. Null when it was hardly seen.
 */
export function sizeHalfWay(sizes: readonly { readonly yPx: number; readonly radiusPx: number }[]): number | null {
  if (sizes.length < 10) return null;
  const mean = (of: (size: { readonly yPx: number; readonly radiusPx: number }) => number) =>
    sizes.reduce((sum, size) => sum + of(size), 0) / sizes.length;
  const meanY = mean(({ yPx }) => yPx);
  const meanRadius = mean(({ radiusPx }) => radiusPx);
  const spread = mean(({ yPx }) => (yPx - meanY) ** 2);
  const along = mean(({ yPx, radiusPx }) => (yPx - meanY) * (radiusPx - meanRadius));
  const highest = sizes.reduce((least, { yPx }) => Math.min(least, yPx), Number.POSITIVE_INFINITY);
  const lowest = sizes.reduce((most, { yPx }) => Math.max(most, yPx), Number.NEGATIVE_INFINITY);
  return meanRadius + (spread > 1 ? along / spread : 0) * ((highest + lowest) / 2 - meanY);
}
