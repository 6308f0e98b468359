/** A lifter's own line of mean concentric speed over load: speed = intercept + slope × load. */
export type LoadSpeedLine = {
  readonly slopeMpsPerKg: number;
  readonly interceptMps: number;
  /** Share of the speeds' variance that the line explains, 0-1. */
  readonly rSquared: number;
};

/**
 * The straight line through loads and the mean concentric speeds they moved at, by least squares. Null for fewer than two
 * different loads, or when speed doesn't fall as the load rises: such a line says nothing of a heaviest load.
 */
export function loadSpeedLine(
  sets: readonly { readonly loadKg: number; readonly speedMps: number }[],
): LoadSpeedLine | null {
  const different = (of: (set: (typeof sets)[number]) => number) => new Set(sets.map(of)).size;
  if (different((set) => set.loadKg) < 2 || different((set) => set.speedMps) < 2) return null;
  const mean = (of: (set: (typeof sets)[number]) => number) =>
    sets.reduce((sum, set) => sum + of(set), 0) / sets.length;
  const [meanKg, meanMps] = [mean((set) => set.loadKg), mean((set) => set.speedMps)];
  const sxx = mean((set) => (set.loadKg - meanKg) ** 2);
  const sxy = mean((set) => (set.loadKg - meanKg) * (set.speedMps - meanMps));
  const syy = mean((set) => (set.speedMps - meanMps) ** 2);
  if (!(sxy < 0)) return null;
  const slopeMpsPerKg = sxy / sxx;
  return { slopeMpsPerKg, interceptMps: meanMps - slopeMpsPerKg * meanKg, rSquared: sxy ** 2 / (sxx * syy) };
}

/** The load in kilograms that a line lets move at this speed. */
export const loadAtSpeedKg = (line: LoadSpeedLine, speedMps: number): number =>
  (speedMps - line.interceptMps) / line.slopeMpsPerKg;
