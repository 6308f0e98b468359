import type { PointPx } from '../../../../engine/recording/recording.ts';
import { whiteNoise } from '../signal/whiteNoise.ts';

/** Metres in the axes of a level camera at its first moment: to the right, down, ahead. */
export type Place = { readonly x: number; readonly y: number; readonly z: number };

export const shown = { width: 640, height: 360 } as const;
export const middle: PointPx = { xPx: shown.width / 2, yPx: shown.height / 2 };
export const focalPx = 540;
export const cameraHeightM = 1.4;
/** It looks down a little: 8°. */
const lookDownRad = 0.14;

/** Where a camera in somebody's hands is: its place in metres, its turn in radians about the same axes, how far it zooms. */
export type Held = { readonly at: Place; readonly turn: Place; readonly zoom: number };

/** A hand that sways the camera by about so many metres, and turns it by half a degree: several slow waves from a seed. */
export function swayingHand(seed: number, swayM: number): (timeS: number) => Held {
  const numbers = whiteNoise(64, seed);
  const wave = (first: number, size: number) => {
    const parts = [0, 1, 2].map((part) => ({
      size: (size * (1 + 0.3 * (numbers[first + 3 * part] ?? 0))) / (part + 1),
      hz: 0.25 + 0.4 * part + 0.05 * (numbers[first + 3 * part + 1] ?? 0),
      at: 3 * (numbers[first + 3 * part + 2] ?? 0),
    }));
    return (timeS: number) =>
      parts.reduce(
        (sum, one) => sum + one.size * (Math.sin(2 * Math.PI * one.hz * timeS + one.at) - Math.sin(one.at)),
        0,
      );
  };
  const [x, y, z] = [wave(0, swayM), wave(9, swayM), wave(18, swayM)];
  const [up, side, roll] = [wave(27, 0.008), wave(36, 0.008), wave(45, 0.004)];
  return (timeS) => ({
    at: { x: x(timeS), y: y(timeS), z: z(timeS) },
    turn: { x: lookDownRad + up(timeS), y: side(timeS), z: roll(timeS) },
    zoom: 1,
  });
}

/** Where a held camera shows a place, by turning about the axes one after another. */
export function shownAt({ at, turn, zoom }: Held, place: Place): PointPx {
  let [x, y, z] = [place.x - at.x, place.y - at.y, place.z - at.z];
  [x, y] = [x * Math.cos(turn.z) - y * Math.sin(turn.z), x * Math.sin(turn.z) + y * Math.cos(turn.z)];
  [x, z] = [x * Math.cos(turn.y) + z * Math.sin(turn.y), z * Math.cos(turn.y) - x * Math.sin(turn.y)];
  [y, z] = [y * Math.cos(turn.x) - z * Math.sin(turn.x), y * Math.sin(turn.x) + z * Math.cos(turn.x)];
  return { xPx: middle.xPx + (focalPx * zoom * x) / z, yPx: middle.yPx + (focalPx * zoom * y) / z };
}

/** Places on a wall, and on the floor before it, in a grid over what a camera sees of them, the lifter's own strip left out. */
export function roomPlaces({ wallM, floor }: { readonly wallM: number; readonly floor: boolean }): Place[] {
  const places: Place[] = [];
  for (let column = 0; column < 11; column += 1) {
    for (let row = 0; row < 8; row += 1) {
      const right = (column * 58 + 30 - middle.xPx) / focalPx;
      const down = Math.tan(Math.atan((row * 44 + 26 - middle.yPx) / focalPx) + lookDownRad);
      if (Math.abs(right) < 0.09) continue;
      const z = floor && down > 0 ? Math.min(wallM, cameraHeightM / down) : wallM;
      places.push({ x: right * z, y: down * z, z });
    }
  }
  return places;
}
