/** Which derivative of which polynomial is fitted; `derivative` 0 = the smoothed value itself. */
type Fit = { readonly degree: number; readonly derivative: number };

/**
 * Orthogonal polynomials over `count` points one apart and centred on 0 (Gram), by their recurrence: the `order`-th
 * derivative at `x` of each, degree 0 first.
 */
function gramPolynomials(x: number, { degree, derivative }: Fit, count: number): number[] {
  let lower = Array.from({ length: degree + 1 }, () => 0);
  for (let order = 0; order <= derivative; order += 1) {
    const values: number[] = [order === 0 ? 1 : 0];
    for (let k = 0; k < degree; k += 1) {
      const c = (k ** 2 * (count ** 2 - k ** 2)) / (4 * (4 * k ** 2 - 1));
      values.push(x * (values[k] ?? 0) + order * (lower[k] ?? 0) - c * (values[k - 1] ?? 0));
    }
    lower = values;
  }
  return lower;
}

/** Weights over `count` points one apart that give the fit at `at`, measured from their middle (Gorry 1990). */
function fitWeights(count: number, fit: Fit, at: number): number[] {
  const points = Array.from({ length: count }, (_, i) => i - (count - 1) / 2);
  const basis = points.map((x) => gramPolynomials(x, { degree: fit.degree, derivative: 0 }, count));
  const wanted = gramPolynomials(at, fit, count).map((value, k) => {
    const norm = basis.reduce((sum, row) => sum + (row[k] ?? 0) ** 2, 0);
    return value / norm;
  });
  return basis.map((row) => row.reduce((sum, value, k) => sum + value * (wanted[k] ?? 0), 0));
}

/** An odd window of 2 × `halfWidth` + 1 points, and the polynomial fitted to it. */
export type SavitzkyGolayWindow = {
  readonly halfWidth: number;
  readonly degree: number;
  /** 0 (or left out) = smoothed value, 1 = first derivative, and so on. */
  readonly derivative?: number;
};

function checked({ halfWidth, degree, derivative = 0 }: SavitzkyGolayWindow): Fit {
  const whole = [halfWidth, degree, derivative].every((one) => Number.isInteger(one) && one >= 0);
  if (!whole || degree > 2 * halfWidth || derivative > degree) {
    throw new RangeError('a window holds more points than the degree, and the degree is no less than the derivative');
  }
  return { degree, derivative };
}

/**
 * Weights of the least-squares polynomial at the middle of its window, for samples one apart: divide by
 * step^derivative (Savitzky & Golay 1964). Throws a `RangeError` for a degree the window can't hold.
 */
export function savitzkyGolayWeights(window: SavitzkyGolayWindow): number[] {
  return fitWeights(2 * window.halfWidth + 1, checked(window), 0);
}

const weighted = (values: ArrayLike<number>, weights: readonly number[], from: number): number =>
  weights.reduce((sum, weight, i) => sum + weight * (values[from + i] ?? 0), 0);

/**
 * Values on an even grid of `step`, smoothed or derived by a polynomial fitted to each window; near the ends the window
 * stays whole and the polynomial is read off its middle. Exact for polynomials up to the degree, ends included. Fewer
 * values than the window: one window over all of them, with a lower degree if need be (0 for a derivative that it can't hold).
 */
export function savitzkyGolay(
  values: ArrayLike<number>,
  setting: SavitzkyGolayWindow & { readonly step?: number },
): number[] {
  const { degree, derivative } = checked(setting);
  const { length } = values;
  const count = Math.min(2 * setting.halfWidth + 1, length);
  const fit = { degree: Math.min(degree, count - 1), derivative };
  if (length === 0) return [];
  if (fit.degree < derivative) return Array.from(values, () => 0);
  const scale = (setting.step ?? 1) ** derivative;
  const middle = fitWeights(count, fit, 0);
  const half = (count - 1) / 2;
  return Array.from(values, (_, i) => {
    const from = Math.max(0, Math.min(length - count, i - setting.halfWidth));
    const at = i - from - half;
    return weighted(values, at === 0 ? middle : fitWeights(count, fit, at), from) / scale;
  });
}
