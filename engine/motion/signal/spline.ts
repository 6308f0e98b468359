/** Second derivatives of the natural cubic spline at its knots, by the tridiagonal system (Thomas's algorithm). */
function bends(xs: readonly number[], ys: readonly number[]): number[] {
  const last = xs.length - 1;
  const gap = (i: number) => (xs[i + 1] ?? 0) - (xs[i] ?? 0);
  const slope = (i: number) => ((ys[i + 1] ?? 0) - (ys[i] ?? 0)) / gap(i);
  const above: number[] = [0];
  const right: number[] = [0];
  for (let i = 1; i < last; i += 1) {
    const pivot = 2 * (gap(i - 1) + gap(i)) - gap(i - 1) * (above[i - 1] ?? 0);
    above.push(gap(i) / pivot);
    right.push((6 * (slope(i) - slope(i - 1)) - gap(i - 1) * (right[i - 1] ?? 0)) / pivot);
  }
  const second = Array.from(xs, () => 0);
  for (let i = last - 1; i > 0; i -= 1) second[i] = (right[i] ?? 0) - (above[i] ?? 0) * (second[i + 1] ?? 0);
  return second;
}

/** Place of the last knot at or below `x`, the last but one at most. */
function intervalOf(xs: readonly number[], x: number): number {
  let low = 0;
  let high = xs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((xs[middle] ?? 0) <= x) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * The natural cubic spline through points whose x rise strictly. Outside its knots it keeps the value of the nearest one;
 * a single point is a constant. Throws a `RangeError` for no points, or x that don't rise.
 */
export function splineThrough(xs: readonly number[], ys: readonly number[]): (x: number) => number {
  const [first, last] = [xs[0], xs.at(-1)];
  if (first === undefined || last === undefined || xs.length !== ys.length)
    throw new RangeError('a spline needs points');
  if (xs.some((x, i) => i > 0 && !(x > (xs[i - 1] ?? x)))) throw new RangeError('the x of a spline rise');
  const second = bends(xs, ys);
  return (asked) => {
    const x = Math.min(Math.max(asked, first), last);
    const i = intervalOf(xs, x);
    const [x0, x1, y0, y1] = [xs[i] ?? 0, xs[i + 1], ys[i] ?? 0, ys[i + 1]];
    if (x1 === undefined || y1 === undefined) return y0;
    const width = x1 - x0;
    const [a, b] = [(x1 - x) / width, (x - x0) / width];
    return a * y0 + b * y1 + (((a ** 3 - a) * (second[i] ?? 0) + (b ** 3 - b) * (second[i + 1] ?? 0)) * width ** 2) / 6;
  };
}
