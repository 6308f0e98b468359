/** Coefficients of y[n] = a0 x[n] + a1 x[n−1] + a2 x[n−2] + b1 y[n−1] + b2 y[n−2]. */
export type Coefficients = {
  readonly a0: number;
  readonly a1: number;
  readonly a2: number;
  readonly b1: number;
  readonly b2: number;
};

/**
 * What the pre-warped frequency is divided by so that the gain at the cut-off is 1/√2 after all passes:
 * (2^(1/passes) − 1)^(1/4), 0.80224 for two (Winter, Biomechanics and Motor Control of Human Movement, 4th ed., p. 69).
 */
export const passCorrection = (passes: number): number => (2 ** (1 / passes) - 1) ** 0.25;

/**
 * A second-order low-pass by Winter's recursion. The correction for several passes goes on tan(π × cut-off / sampling
 * rate), not on the cut-off in Hz. Throws a `RangeError` unless 0 < cutOffHz < sampleHz / 2 and passes ≥ 1.
 */
export function butterworthCoefficients(setting: {
  readonly cutOffHz: number;
  readonly sampleHz: number;
  readonly passes: number;
}): Coefficients {
  const { cutOffHz, sampleHz, passes } = setting;
  if (!(cutOffHz > 0 && cutOffHz < sampleHz / 2)) throw new RangeError('a cut-off lies below half the sampling rate');
  if (!(passes >= 1)) throw new RangeError('a filter makes one pass or more');
  const warped = Math.tan((Math.PI * cutOffHz) / sampleHz) / passCorrection(passes);
  const k2 = warped ** 2;
  const a0 = k2 / (1 + Math.SQRT2 * warped + k2);
  const k3 = (2 * a0) / k2;
  return { a0, a1: 2 * a0, a2: a0, b1: -2 * a0 + k3, b2: 1 - 2 * a0 - k3 };
}

/**
 * One pass of the recursion. What came before the first value is taken to be `before` for ever, in and out: 0 for a
 * step response, the first value itself for a filter that starts at rest.
 */
export function singlePass(
  values: ArrayLike<number>,
  coefficients: Coefficients,
  before: number = values[0] ?? 0,
): number[] {
  const { a0, a1, a2, b1, b2 } = coefficients;
  let [x1, x2, y1, y2] = [before, before, before, before];
  return Array.from(values, (x) => {
    const y = a0 * x + a1 * x1 + a2 * x2 + b1 * y1 + b2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    return y;
  });
}

/** Samples until a transient of the recursion has died down to a thousandth: from the size of its poles, √−b2. */
function settlingSamples({ b2 }: Coefficients): number {
  const poleSize = Math.sqrt(Math.abs(b2));
  return poleSize < 1e-3 ? 1 : Math.ceil(Math.log(1e-3) / Math.log(Math.min(poleSize, 0.9999)));
}

/**
 * The values with `count` more at either end, mirrored through the end points so that place and slope go on; mirrored
 * again and again where there are fewer values than that.
 */
function mirrored(values: ArrayLike<number>, count: number): number[] {
  const last = values.length - 1;
  const [first, end] = [values[0] ?? 0, values[last] ?? 0];
  return Array.from({ length: values.length + 2 * count }, (_, i) => {
    const turns = Math.floor((i - count) / (2 * last));
    const at = i - count - turns * 2 * last;
    const value = at <= last ? (values[at] ?? 0) : 2 * end - (values[2 * last - at] ?? 0);
    return value + turns * 2 * (end - first);
  });
}

/**
 * Values on an even grid without what is faster than the cut-off, nothing moved in time: a second-order Butterworth run
 * forward and back, with a gain of 1/√2 at the cut-off over both passes. A cut-off at half the sampling rate or above
 * takes nothing away. Throws a `RangeError` for a cut-off that is not above 0.
 */
export function lowPass(
  values: ArrayLike<number>,
  setting: { readonly sampleHz: number; readonly cutOffHz: number },
): number[] {
  const { sampleHz, cutOffHz } = setting;
  if (values.length < 2 || cutOffHz >= sampleHz / 2) return Array.from(values);
  const coefficients = butterworthCoefficients({ cutOffHz, sampleHz, passes: 2 });
  const count = 3 * settlingSamples(coefficients);
  const forward = singlePass(mirrored(values, count), coefficients);
  const back = singlePass(forward.reverse(), coefficients).reverse();
  return back.slice(count, count + values.length);
}
