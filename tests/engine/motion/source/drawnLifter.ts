import type { Body } from '../../../../engine/recording/recording.ts';

type Place = readonly [xPx: number, yPx: number];

/** A body that stands upright, 897 px from ankles to ears: its height is 1000 px (Drillis & Contini 1966). */
const standing: Readonly<Record<string, Place>> = {
  nose: [520, 110],
  eye: [512, 100],
  ear: [500, 103],
  shoulder: [500, 220],
  elbow: [500, 400],
  wrist: [500, 550],
  hip: [500, 510],
  knee: [500, 760],
  ankle: [500, 1000],
};
const order = [
  'nose',
  'eye',
  'eye',
  'ear',
  'ear',
  'shoulder',
  'shoulder',
  'elbow',
  'elbow',
  'wrist',
  'wrist',
  'hip',
  'hip',
  'knee',
  'knee',
  'ankle',
  'ankle',
] as const;

/** A standing body, with the named joints moved by so many pixels (down is positive) and as sure as given. */
export function drawnBody(
  moved: Readonly<Record<string, Place>> = {},
  confidence: (joint: string) => number = () => 0.8,
): Body {
  return order.map((joint) => {
    const [xPx, yPx] = standing[joint] ?? [0, 0];
    const [byX, byY] = moved[joint] ?? [0, 0];
    return { xPx: xPx + byX, yPx: yPx + byY, confidence: confidence(joint) };
  });
}

/** Every joint above the knees lower by so many pixels, the knees bent forward: a squat. */
export function squatting(downPx: number): Body {
  const down: Place = [0, downPx];
  return drawnBody({
    ...{ nose: down, eye: down, ear: down, shoulder: down, elbow: down, wrist: down, hip: down },
    knee: [downPx * 0.5, downPx * 0.1],
  });
}
