import type { PictureSize } from '../../../media/probe/streams.ts';

/** One plane of a picture, rows from the top. */
export type Plane = { readonly data: Uint8Array; readonly width: number; readonly height: number };

export type Planes = { readonly luma: Plane; readonly blueDifference: Plane; readonly redDifference: Plane };

/** Bytes of a `yuv420p` picture of an even size. */
export const planarBytes = ({ width, height }: PictureSize): number => (width * height * 3) / 2;

/** The planes of a `yuv420p` picture of an even size: views of its bytes. */
export function planesOf(bytes: Uint8Array, { width, height }: PictureSize): Planes {
  const whole = width * height;
  const quarter = whole / 4;
  const half = { width: width / 2, height: height / 2 };
  return {
    luma: { data: bytes.subarray(0, whole), width, height },
    blueDifference: { data: bytes.subarray(whole, whole + quarter), ...half },
    redDifference: { data: bytes.subarray(whole + quarter, whole + 2 * quarter), ...half },
  };
}

/** How red and blue count for the luma of a clip's pictures. */
export type LumaWeights = { readonly red: number; readonly blue: number };

/** A drawn rectangle as planes of video, on even pixels, each with its own share of cover, 0-255. */
export type Layer = {
  readonly left: number;
  readonly top: number;
  readonly luma: Plane;
  readonly lumaCover: Uint8Array;
  readonly blueDifference: Plane;
  readonly redDifference: Plane;
  readonly chromaCover: Uint8Array;
};

type Drawn = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** Colours with their cover (RGBA, not premultiplied) as a layer in limited range. Place and size are even. */
export function layerOf(rgba: Uint8ClampedArray, at: Drawn, weights: LumaWeights): Layer {
  const { left, top, width, height } = at;
  const half = { width: width / 2, height: height / 2 };
  const green = 1 - weights.red - weights.blue;
  const luma = new Uint8Array(width * height);
  const lumaCover = new Uint8Array(width * height);
  const blue = new Uint8Array(half.width * half.height).fill(128);
  const red = new Uint8Array(half.width * half.height).fill(128);
  const chromaCover = new Uint8Array(half.width * half.height);
  for (let row = 0; row < height; row += 2) {
    for (let column = 0; column < width; column += 2) {
      let [covers, blues, reds] = [0, 0, 0];
      for (let corner = 0; corner < 4; corner += 1) {
        const index = (row + (corner >> 1)) * width + column + (corner & 1);
        const cover = rgba[4 * index + 3] ?? 0;
        if (cover === 0) continue;
        const r = rgba[4 * index] ?? 0;
        const b = rgba[4 * index + 2] ?? 0;
        const light = weights.red * r + green * (rgba[4 * index + 1] ?? 0) + weights.blue * b;
        luma[index] = Math.round(16 + (219 / 255) * light);
        lumaCover[index] = cover;
        covers += cover;
        blues += (cover * (b - light)) / (1 - weights.blue);
        reds += (cover * (r - light)) / (1 - weights.red);
      }
      if (covers === 0) continue;
      const index = (row / 2) * half.width + column / 2;
      chromaCover[index] = Math.round(covers / 4);
      blue[index] = Math.round(128 + ((112 / 255) * blues) / covers);
      red[index] = Math.round(128 + ((112 / 255) * reds) / covers);
    }
  }
  return {
    ...{ left, top, lumaCover, chromaCover },
    luma: { data: luma, width, height },
    blueDifference: { data: blue, ...half },
    redDifference: { data: red, ...half },
  };
}

/** Lays a layer, which must lie within the picture, over the bytes of a `yuv420p` picture. */
export function layOver(bytes: Uint8Array, size: PictureSize, layer: Layer): void {
  const planes = planesOf(bytes, size);
  const { left, top } = layer;
  blend(planes.luma, layer.luma, layer.lumaCover, { left, top });
  const halved = { left: left / 2, top: top / 2 };
  blend(planes.blueDifference, layer.blueDifference, layer.chromaCover, halved);
  blend(planes.redDifference, layer.redDifference, layer.chromaCover, halved);
}

function blend(
  under: Plane,
  over: Plane,
  cover: Uint8Array,
  { left, top }: { readonly left: number; readonly top: number },
): void {
  for (let row = 0; row < over.height; row += 1) {
    let below = (top + row) * under.width + left;
    const end = (row + 1) * over.width;
    for (let index = row * over.width; index < end; index += 1, below += 1) {
      const share = cover[index] ?? 0;
      if (share === 0) continue;
      const beneath = under.data[below] ?? 0;
      under.data[below] = beneath + Math.round((((over.data[index] ?? 0) - beneath) * share) / 255);
    }
  }
}
