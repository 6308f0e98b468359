import type { Networks } from '../../../../../electron/backend/measure/joints/networks.ts';
import { type Body, jointNames, type PointPx } from '../../../../../engine/recording/recording.ts';

/** A stick figure's joints in shares of its height, from the middle of its feet upward. */
const standing: Readonly<Record<string, readonly [number, number]>> = {
  nose: [0.03, 0.93],
  Eye: [0.02, 0.95],
  Ear: [0, 0.94],
  Shoulder: [0.1, 0.82],
  Elbow: [0.13, 0.65],
  Wrist: [0.14, 0.5],
  Hip: [0.07, 0.53],
  Knee: [0.07, 0.28],
  Ankle: [0.07, 0.04],
};

export type DrawnPerson = {
  readonly feet: PointPx;
  readonly heightPx: number;
  /** 0 = stands, 1 = squats so deep that everything from the knees up is lower by a quarter of the height. */
  readonly squat?: number;
  readonly posture?: 'standing' | 'lying' | 'onHands';
  readonly confidence?: number;
};

/** The body of a stick figure as a network would give it. */
export function drawnBody({ feet, heightPx, squat = 0, posture = 'standing', confidence = 0.8 }: DrawnPerson): Body {
  return jointNames.map((name) => {
    const side = name.startsWith('left') ? 1 : -1;
    const [across, up] = standing[name.replace(/left|right/, '')] ?? [0, 0];
    const x = name === 'nose' ? across : side * across;
    const y = up > 0.3 ? up - 0.25 * squat : up;
    const [right, above] = posture === 'standing' ? [x, y] : posture === 'lying' ? [y, x + 0.15] : [x, 1 - y];
    return { xPx: feet.xPx + right * heightPx, yPx: feet.yPx - above * heightPx, confidence };
  });
}

export type DrawnPicture = { readonly width: number; readonly height: number; readonly people: readonly DrawnPerson[] };

/** How brightness tells a pixel's column, and the blue difference its row; nothing of it is cut off as red, green and blue. */
const columns = { from: 60, span: 120 };
const rows = { from: 110, span: 36 };

/** The bytes of a picture without people, in which each pixel tells where it is. */
export function drawnBytes({ width, height }: Pick<DrawnPicture, 'width' | 'height'>): Uint8Array<ArrayBuffer> {
  const half = { width: Math.ceil(width / 2), height: Math.ceil(height / 2) };
  const bytes = new Uint8Array(width * height + 2 * half.width * half.height).fill(128);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      bytes[y * width + x] = dithered(columns.from + (columns.span * (x + 0.5)) / width, x, y);
    }
  }
  for (let y = 0; y < half.height; y += 1) {
    for (let x = 0; x < half.width; x += 1) {
      bytes[width * height + y * half.width + x] = dithered(rows.from + (rows.span * (y + 0.5)) / half.height, x, y);
    }
  }
  return bytes;
}

/** A whole number, up or down by the pixel's place, so that a few pixels together have the value. */
const dithered = (value: number, x: number, y: number): number => Math.floor(value + ((0.618 * x + 0.382 * y) % 1));

type Shown = { readonly leftPx: number; readonly topPx: number; readonly sidePx: number; readonly turned: boolean };

/** Which part of the picture a network was given, read from the colours; null for a picture of nothing. */
function shownIn(rgb: Int32Array, side: number, { width, height }: DrawnPicture): Shown | null {
  const places: { readonly i: number; readonly j: number; readonly x: number; readonly y: number }[] = [];
  for (let j = 0; j < side; j += 4) {
    for (let i = 0; i < side; i += 4) {
      const at = 3 * (j * side + i);
      const [red = 0, , blue = 0] = rgb.subarray(at, at + 3);
      const x = ((red / 1.16438 + 16 - columns.from) / columns.span) * width;
      const y = (((blue - red) / 2.1124 + 128 - rows.from) / rows.span) * height;
      if (x > 0 && y > 0 && x < width && y < height) places.push({ i, j, x, y });
    }
  }
  if (places.length < 8) return null;
  const across = line(places.map(({ i, x }) => [i, x]));
  const down = line(places.map(({ j, y }) => [j, y]));
  const turned = down.slope < 0;
  const sidePx = Math.abs(across.slope) * side;
  const at = (fit: { readonly slope: number; readonly start: number }) => fit.start - (turned ? sidePx : 0);
  return { leftPx: at(across), topPx: at(down), sidePx, turned };
}

function line(points: readonly (readonly [number, number])[]): { readonly slope: number; readonly start: number } {
  const mean = (axis: 0 | 1) => points.reduce((sum, point) => sum + point[axis], 0) / points.length;
  const [u, v] = [mean(0), mean(1)];
  const slope =
    points.reduce((sum, [a, b]) => sum + (a - u) * (b - v), 0) / points.reduce((sum, [a]) => sum + (a - u) ** 2, 1e-9);
  return { slope, start: v - slope * u };
}

/** A person smaller than this share of what a network is given is not seen; one upside down is hardly seen. */
const smallest = { one: 0.15, several: 0.1 };
const unsure = 0.1;

/**
 * Networks that see the picture's people where they are drawn: `one` the most central of those in the crop, `several`
 * all of them. Each tells what it was asked for.
 */
export function networksOf(picture: DrawnPicture): Networks & { readonly asked: ('one' | 'several')[] } {
  const asked: ('one' | 'several')[] = [];
  const visible = (shown: Shown, least: number) =>
    picture.people
      .map((person) => ({ person, middle: middleOf(person) }))
      .filter(({ person, middle }) => {
        const right = shown.leftPx + shown.sidePx;
        const bottom = shown.topPx + shown.sidePx;
        const inside =
          middle.xPx > shown.leftPx && middle.xPx < right && middle.yPx > shown.topPx && middle.yPx < bottom;
        return inside && person.heightPx >= least * shown.sidePx;
      })
      .sort((one, other) => fromMiddle(shown, one.middle) - fromMiddle(shown, other.middle))
      .map(({ person }) => person);
  const written = (person: DrawnPerson, { leftPx, topPx, sidePx, turned }: Shown): number[] =>
    drawnBody(person).flatMap(({ xPx, yPx, confidence }) => {
      const [x, y] = [(xPx - leftPx) / sidePx, (yPx - topPx) / sidePx];
      const wrongWayUp = turned !== (person.posture === 'onHands');
      return [turned ? 1 - y : y, turned ? 1 - x : x, wrongWayUp ? unsure : confidence];
    });
  return {
    asked,
    one: async (rgb, side) => {
      asked.push('one');
      const shown = shownIn(rgb, side, picture);
      const [person] = shown === null ? [] : visible(shown, smallest.one);
      return Float32Array.from(
        shown === null || person === undefined ? new Array(51).fill(0.05) : written(person, shown),
      );
    },
    several: async (rgb, side) => {
      asked.push('several');
      const shown = shownIn(rgb, side, picture);
      const numbers = new Float32Array(6 * 56);
      if (shown === null) return numbers;
      for (const [i, person] of visible(shown, smallest.several).slice(0, 6).entries()) {
        numbers.set(written(person, shown), i * 56);
      }
      return numbers;
    },
  };
}

function middleOf({ feet, heightPx, posture }: DrawnPerson): PointPx {
  if (posture === 'lying') return { xPx: feet.xPx + heightPx / 2, yPx: feet.yPx - 0.15 * heightPx };
  return { xPx: feet.xPx, yPx: feet.yPx - heightPx / 2 };
}

const fromMiddle = ({ leftPx, topPx, sidePx }: Shown, { xPx, yPx }: PointPx): number =>
  Math.hypot(leftPx + sidePx / 2 - xPx, topPx + sidePx / 2 - yPx);
