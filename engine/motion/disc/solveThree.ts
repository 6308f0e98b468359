/**
 * Solves three normal equations of a symmetric matrix: sums = [xx, xy, xs, yy, ys, ss, x·b, y·b, s·b]. Null when they
 * don't determine the three.
 */
export function solveThree(
  sums: Float64Array,
): { readonly x: number; readonly y: number; readonly size: number } | null {
  const [xx = 0, xy = 0, xs = 0, yy = 0, ys = 0, ss = 0, bx = 0, by = 0, bs = 0] = sums;
  const minorX = yy * ss - ys * ys;
  const minorY = xs * ys - xy * ss;
  const minorSize = xy * ys - yy * xs;
  const determinant = xx * minorX + xy * minorY + xs * minorSize;
  // By the size of the diagonal, so that the test does not depend on how many points there are.
  if (!(determinant > 1e-4 * xx * yy * ss)) return null;
  return {
    x: (bx * minorX + by * minorY + bs * minorSize) / determinant,
    y: (bx * minorY + by * (xx * ss - xs * xs) + bs * (xs * xy - xx * ys)) / determinant,
    size: (bx * minorSize + by * (xs * xy - xx * ys) + bs * (xx * yy - xy * xy)) / determinant,
  };
}
