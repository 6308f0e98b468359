/** A square part of a picture, in pixels of the picture; it may reach beyond its edges. */
export type Crop = { readonly leftPx: number; readonly topPx: number; readonly sidePx: number };

/** One plane of a picture: rows from the top, a byte a pixel. */
export type Plane = { readonly width: number; readonly height: number; readonly data: Uint8Array };

/** For one place of the output: the source pixels it takes from, and their weights. */
type Taps = { readonly pixels: readonly number[]; readonly weights: readonly number[] };

/**
 * Resamples a square part of a plane to `side` × `side` with a triangle filter as wide as the reduction, so that fine
 * patterns do not alias. What lies beyond the plane's edges has the value `beyond`.
 */
export function resample(plane: Plane, crop: Crop, side: number, beyond: number): Float32Array {
  const { width, data } = plane;
  const across = tapsOf({ start: crop.leftPx, length: crop.sidePx, side, limit: width });
  const down = tapsOf({ start: crop.topPx, length: crop.sidePx, side, limit: plane.height });
  const out = new Float32Array(side * side).fill(beyond);
  const columns = across.flatMap(({ pixels }) => pixels);
  const left = columns.reduce((least, column) => Math.min(least, column), width);
  const right = columns.reduce((most, column) => Math.max(most, column + 1), 0);
  const row = new Float32Array(width);
  down.forEach(({ pixels, weights }, y) => {
    if (pixels.length === 0 || right <= left) return;
    // Less the value beyond, so that what falls over the edge counts nothing.
    row.fill(0, left, right);
    for (const [i, pixel] of pixels.entries()) {
      addRow(row, { data, start: pixel * width, left, right, beyond }, weights[i] ?? 0);
    }
    across.forEach((taps, x) => {
      let sum = beyond;
      for (let i = 0; i < taps.pixels.length; i += 1) sum += (taps.weights[i] ?? 0) * (row[taps.pixels[i] ?? 0] ?? 0);
      out[y * side + x] = sum;
    });
  });
  return out;
}

type Row = {
  readonly data: Uint8Array;
  readonly start: number;
  readonly left: number;
  readonly right: number;
  readonly beyond: number;
};

function addRow(sum: Float32Array, { data, start, left, right, beyond }: Row, weight: number): void {
  for (let x = left; x < right; x += 1) sum[x] = (sum[x] ?? 0) + weight * ((data[start + x] ?? 0) - beyond);
}

/** Weights sum to 1 over an endless plane; those that fall beyond its edges are left out. */
function tapsOf({
  start,
  length,
  side,
  limit,
}: {
  readonly start: number;
  readonly length: number;
  readonly side: number;
  readonly limit: number;
}): readonly Taps[] {
  const step = length / side;
  const reach = Math.max(1, step);
  const stride = strideFor(step);
  return Array.from({ length: side }, (_, place) => {
    const centre = start + (place + 0.5) * step - 0.5;
    const pixels: number[] = [];
    const weights: number[] = [];
    let sum = 0;
    for (let pixel = Math.ceil(centre - reach); pixel <= centre + reach; pixel += stride) {
      const weight = 1 - Math.abs(pixel - centre) / reach;
      sum += weight;
      if (pixel < 0 || pixel >= limit) continue;
      pixels.push(pixel);
      weights.push(weight);
    }
    return { pixels, weights: weights.map((weight) => weight / sum) };
  });
}

/** Large reductions take every so many pixels only, which is enough to average; an odd number, so that no stripes are met in step. */
function strideFor(step: number): number {
  const most = Math.floor(step / 2);
  return Math.max(1, most % 2 === 0 ? most - 1 : most);
}
