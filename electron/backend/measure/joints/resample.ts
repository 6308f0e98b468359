/** A square part of a picture, in pixels of the picture; it may reach beyond its edges. */
export type Crop = { readonly leftPx: number; readonly topPx: number; readonly sidePx: number };

/** One plane of a picture: rows from the top, a byte a pixel. */
export type Plane = { readonly width: number; readonly height: number; readonly data: Uint8Array };

/**
 * For each place of the output: the first source pixel it takes from, how many, every so many (`stride`), and their weights,
 * `most` to a place.
 */
type Taps = {
  readonly first: Int32Array;
  readonly count: Int32Array;
  readonly weights: Float32Array;
  readonly most: number;
  readonly stride: number;
};

/**
 * Resamples a square part of a plane to `side` × `side` with a triangle filter as wide as the reduction, so that fine
 * patterns do not alias. What lies beyond the plane's edges has the value `beyond`.
 */
export function resample(plane: Plane, crop: Crop, side: number, beyond: number): Float32Array {
  return resampleBy(plane, tapsFor(plane, crop, side), beyond);
}

/** Where each row and column of the output takes from, of planes of one size. */
type PlaneTaps = { readonly across: Taps; readonly down: Taps };

const tapsFor = ({ width, height }: Size, { leftPx, topPx, sidePx }: Crop, side: number): PlaneTaps => ({
  across: tapsOf({ start: leftPx, length: sidePx, side, limit: width }),
  down: tapsOf({ start: topPx, length: sidePx, side, limit: height }),
});

function resampleBy({ width, data }: Plane, { across, down }: PlaneTaps, beyond: number): Float32Array {
  const side = down.count.length;
  const out = new Float32Array(side * side).fill(beyond);
  const [left, right] = rangeOf(across);
  if (right <= left) return out;
  const row = new Float32Array(width);
  for (let y = 0; y < side; y += 1) {
    const count = down.count[y] ?? 0;
    if (count === 0) continue;
    // Less the value beyond, so that what falls over the edge counts nothing.
    let offset = 0;
    for (let at = y * down.most; at < y * down.most + count; at += 1) offset -= beyond * (down.weights[at] ?? 0);
    row.fill(offset, left, right);
    const place = { start: (down.first[y] ?? 0) * width, step: down.stride * width, left, right };
    for (let tap = 0; tap < count; tap += rowsAtOnce) {
      const at = y * down.most + tap;
      addRows(row, data, place, tap, weightsFrom(down.weights, at, count - tap));
    }
    narrow(row, across, out.subarray(y * side, (y + 1) * side));
  }
  return out;
}

/** Rows that are added in one go: each place is then read and written less often. */
const rowsAtOnce = 4;

type Place = { readonly start: number; readonly step: number; readonly left: number; readonly right: number };
type FourWeights = readonly [number, number, number, number];

/** The next weights, 0 for those that are none of the row's. */
const weightsFrom = (weights: Float32Array, at: number, left: number): FourWeights => [
  weights[at] ?? 0,
  left > 1 ? (weights[at + 1] ?? 0) : 0,
  left > 2 ? (weights[at + 2] ?? 0) : 0,
  left > 3 ? (weights[at + 3] ?? 0) : 0,
];

/** Adds four rows to a sum, from the given tap on. A row whose weight is 0 is read in the first one's place. */
function addRows(
  sum: Float32Array,
  data: Uint8Array,
  { start, step, left, right }: Place,
  tap: number,
  [one, two, three, four]: FourWeights,
): void {
  const first = start + tap * step;
  const second = two === 0 ? first : first + step;
  const third = three === 0 ? first : first + 2 * step;
  const fourth = four === 0 ? first : first + 3 * step;
  for (let x = left; x < right; x += 1) {
    sum[x] =
      (sum[x] ?? 0) +
      one * (data[first + x] ?? 0) +
      two * (data[second + x] ?? 0) +
      three * (data[third + x] ?? 0) +
      four * (data[fourth + x] ?? 0);
  }
}

/** Adds to each place of the output what its taps give of a row. */
function narrow(row: Float32Array, { first, count, weights, most, stride }: Taps, out: Float32Array): void {
  for (let x = 0; x < out.length; x += 1) {
    const taps = count[x] ?? 0;
    let pixel = first[x] ?? 0;
    let sum = 0;
    for (let at = x * most; at < x * most + taps; at += 1) {
      sum += (weights[at] ?? 0) * (row[pixel] ?? 0);
      pixel += stride;
    }
    out[x] = (out[x] ?? 0) + sum;
  }
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
}): Taps {
  const step = length / side;
  const reach = Math.max(1, step);
  const stride = strideFor(step);
  const most = Math.ceil((2 * reach + 1) / stride) + 1;
  const first = new Int32Array(side);
  const count = new Int32Array(side);
  const weights = new Float32Array(side * most);
  for (let index = 0; index < side; index += 1) {
    const centre = start + (index + 0.5) * step - 0.5;
    const inside: number[] = [];
    let sum = 0;
    for (let pixel = Math.ceil(centre - reach); pixel <= centre + reach; pixel += stride) {
      const weight = 1 - Math.abs(pixel - centre) / reach;
      sum += weight;
      if (pixel < 0 || pixel >= limit) continue;
      if (inside.length === 0) first[index] = pixel;
      inside.push(weight);
    }
    count[index] = inside.length;
    weights.set(
      inside.map((weight) => weight / sum),
      index * most,
    );
  }
  return { first, count, weights, most, stride };
}

/** Source pixels from the first to behind the last that anything is taken from. */
function rangeOf({ first, count, stride }: Taps): readonly [number, number] {
  let from = Number.POSITIVE_INFINITY;
  let to = 0;
  count.forEach((taps, index) => {
    if (taps === 0) return;
    from = Math.min(from, first[index] ?? 0);
    to = Math.max(to, (first[index] ?? 0) + (taps - 1) * stride + 1);
  });
  return [from, to];
}

/** Large reductions skip pixels, which leaves enough to average; an odd step, so that it never falls in with stripes. */
function strideFor(step: number): number {
  const most = Math.floor(step / 2);
  return Math.max(1, most % 2 === 0 ? most - 1 : most);
}

export type Size = { readonly width: number; readonly height: number };

/** Planes of a picture whose bytes hold the grey plane, then the two colour differences at half width and height. */
function planesOf(bytes: Uint8Array, { width, height }: Size) {
  const half = { width: Math.ceil(width / 2), height: Math.ceil(height / 2) };
  const grey = width * height;
  const difference = half.width * half.height;
  const plane = (size: Size, start: number): Plane => ({
    ...size,
    data: bytes.subarray(start, start + size.width * size.height),
  });
  return {
    grey: plane({ width, height }, 0),
    blueDifference: plane(half, grey),
    redDifference: plane(half, grey + difference),
  };
}

const clamp = (value: number) => Math.max(0, Math.min(255, value));

/**
 * Part of a video picture as red, green and blue (0-255, three numbers a pixel, rows from the top), black beyond its edges. Colours by ITU-R
 * BT.709, limited range.
 *
 * @param bytes planar 4:2:0: the grey plane, then blue and red difference
 * @param side width and height of what is given
 */
export function colourCrop(bytes: Uint8Array, size: Size, crop: Crop, side: number): Int32Array {
  const { grey, blueDifference, redDifference } = planesOf(bytes, size);
  const half = { leftPx: crop.leftPx / 2, topPx: crop.topPx / 2, sidePx: crop.sidePx / 2 };
  const y = resample(grey, crop, side, 16);
  const halfTaps = tapsFor(blueDifference, half, side);
  const u = resampleBy(blueDifference, halfTaps, 128);
  const v = resampleBy(redDifference, halfTaps, 128);
  const rgb = new Int32Array(3 * side * side);
  for (let i = 0; i < y.length; i += 1) {
    const light = 1.16438 * ((y[i] ?? 16) - 16);
    const blue = (u[i] ?? 128) - 128;
    const red = (v[i] ?? 128) - 128;
    rgb[3 * i] = clamp(light + 1.79274 * red);
    rgb[3 * i + 1] = clamp(light - 0.21325 * blue - 0.53291 * red);
    rgb[3 * i + 2] = clamp(light + 2.1124 * blue);
  }
  return rgb;
}
