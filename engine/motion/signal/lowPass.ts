import { type ButterworthCoefficients, butterworthCoefficients, singlePass } from './butterworth.ts';

/** Samples until a transient of the recursion has died down to a thousandth: from the size of its poles, √−b2. */
function settlingSamples({ b2 }: ButterworthCoefficients): number {
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
