import { describe, expect, it } from 'vitest';
import { cameraOf, steadied } from '../../../../engine/motion/camera/cameraPath.ts';
import { roomOfLooks } from '../../../../engine/motion/camera/roomOfLooks.ts';
import { fitSimilarity, inverseOf, type Similarity, unmoved } from '../../../../engine/motion/camera/similarity.ts';
import { steadyCameras } from '../../../../engine/motion/source/steadyCameras.ts';
import { type Body, type CameraPath, jointNames, type Recording } from '../../../../engine/recording/recording.ts';
import {
  cameraHeightM,
  focalPx,
  type Held,
  type Place,
  roomPlaces,
  shown,
  shownAt,
  swayingHand,
} from '../camera/handHeld.ts';
import { whiteNoise } from '../signal/whiteNoise.ts';

const frames = 180;
const timesS = Array.from({ length: frames }, (_, frame) => frame / 30);
const lifterM = 3.4;
const discM = lifterM - 0.7;
const pxPerM = focalPx / discM;

/** A lifter who stands in front of the camera, as a stick figure; only what gives height and feet matters. */
const heightsM: Readonly<Record<string, number>> = { Ear: 1.62, Shoulder: 1.43, Hip: 0.92, Knee: 0.5, Ankle: 0.07 };

function bodyIn(held: Held, frame: number): Body {
  const noise = whiteNoise(2 * jointNames.length, frame + 1);
  return jointNames.map((name, index) => {
    const part = Object.keys(heightsM).find((one) => name.endsWith(one));
    const z = lifterM + (name.startsWith('left') ? 0.15 : -0.15);
    const at = shownAt(held, { x: 0, y: cameraHeightM - (heightsM[part ?? 'Hip'] ?? 1), z });
    const off = (axis: number) => 1.2 * (noise[2 * index + axis] ?? 0);
    return { xPx: at.xPx + off(0), yPx: at.yPx + off(1), confidence: part ? 0.8 : 0.1 };
  });
}

const discAt = (timeS: number): Place => ({ x: 0.05, y: 0.2 - 0.25 * Math.cos(2.1 * timeS), z: discM });

/** What is recorded of the lifter, a disc and the room by a camera in somebody's hands. */
function recorded(heldAt: (timeS: number) => Held, look: { readonly room: boolean }): Recording {
  const places = roomPlaces({ wallM: 6, floor: true });
  const marks = places.map((place) => ({ ...shownAt(heldAt(0), place), frame: 0 }));
  let near: Similarity = unmoved;
  const looks = timesS.map((timeS, frame) => {
    const seen = places.map((place) => shownAt(heldAt(timeS), place));
    const pairs = marks.flatMap((from, index) => (seen[index] ? [{ from, to: seen[index] }] : []));
    const here = fitSimilarity(pairs, near)?.similarity ?? null;
    near = here ?? near;
    return { frame, here, places: seen };
  });
  const room = look.room ? roomOfLooks(looks, { size: shown, factor: 1, frames, marks }) : null;
  const camera: CameraPath = {
    ...{ moves: true, removable: true, uprights: [] },
    frames: looks.map(({ here }) => {
      const { a, b, shiftXPx, shiftYPx } = inverseOf(here ?? unmoved);
      return { shiftXPx, shiftYPx, turnDeg: (Math.atan2(b, a) * 180) / Math.PI, scale: Math.hypot(a, b) };
    }),
    ...(room && { room }),
  };
  return {
    disc: {
      method: 'drawn',
      frames: timesS.map((timeS) => ({ ...shownAt(heldAt(timeS), discAt(timeS)), confidence: 1 })),
      outline: { radiusPx: 0.225 * pxPerM, radiusPlusMinusPx: 0.2, axisRatio: 1, majorAxisDeg: 90 },
      camera,
    },
    point: null,
    joints: { method: 'drawn', everyFrames: 1, frames: timesS.map((timeS, frame) => bodyIn(heldAt(timeS), frame)) },
    camera,
    warnings: [],
  };
}

/** How far the disc's steadied height strays from where a still camera shows it, in pixels: standard deviation. */
function strayPx(path: CameraPath | null, heldAt: (timeS: number) => Held): number {
  const strays = timesS.map((timeS, frame) => {
    const back = steadied(path, frame, shownAt(heldAt(timeS), discAt(timeS)));
    return back.yPx - shownAt(heldAt(0), discAt(timeS)).yPx;
  });
  const mean = strays.reduce((sum, stray) => sum + stray, 0) / frames;
  return Math.sqrt(strays.reduce((sum, stray) => sum + (stray - mean) ** 2, 0) / frames);
}

const options = { timesS, discDiameterM: 0.45 } as const;

describe('a disc filmed by a camera in somebody’s hands', () => {
  it.each([1, 2, 3, 4])('strays by a third of what the background alone leaves, or less (hand %d)', (seed) => {
    const heldAt = swayingHand(seed, 0.015);
    const recording = recorded(heldAt, { room: true });
    const { disc } = steadyCameras(recording, options);
    const byBackground = strayPx(cameraOf(recording), heldAt);
    expect(byBackground).toBeGreaterThan(0.6);
    expect(strayPx(disc.path, heldAt)).toBeLessThan(byBackground / 3);
  });

  it('is told to stray by about as much as it does, with and without a room', () => {
    const seeds = [1, 2, 3, 4];
    for (const room of [true, false]) {
      const within = seeds.filter((seed) => {
        const heldAt = swayingHand(seed, 0.012);
        const { disc } = steadyCameras(recorded(heldAt, { room }), options);
        // Nine in ten lie within 1.645 deviations: what is told must be no smaller than the stray over that.
        return strayPx(disc.path, heldAt) <= 1.645 * disc.wanderPx;
      });
      expect(within.length).toBeGreaterThanOrEqual(3);
    }
  });
});

describe('a camera whose background tells nothing', () => {
  const lost: CameraPath = { moves: true, removable: false, frames: [], uprights: [] };
  /** Shoulders go down and up by 80 px while the picture shakes by 30 px; the feet with the picture, or with the shoulders. */
  const shaken = (hang: boolean): Recording => ({
    ...{ disc: null, point: null, camera: lost, warnings: [] },
    joints: {
      ...{ method: 'drawn', everyFrames: 1 },
      frames: timesS.map((timeS) =>
        jointNames.map((name) => {
          const way = 40 - 40 * Math.cos(2.1 * timeS);
          const goes = name.endsWith('Ankle') && !hang ? 0 : way;
          const from = name.endsWith('Ankle') ? 300 : name.endsWith('Shoulder') ? 120 : 200;
          return { xPx: 320, yPx: from + goes + 15 * Math.sin(5 * timeS), confidence: 0.8 };
        }),
      ),
    },
  });

  it('is read from feet that stand, so that tempo can still be told', () => {
    const { body } = steadyCameras(shaken(false), options);
    expect(body.wanderPx).toBeGreaterThan(0);
    timesS.slice(10, -10).forEach((timeS, index) => {
      const frame = index + 10;
      const back = steadied(body.path, frame, { xPx: 320, yPx: 120 + 15 * Math.sin(5 * timeS) });
      const start = 120 + 15 * Math.sin(0);
      expect(Math.abs(back.yPx - start)).toBeLessThan(2.5);
    });
  });

  it('is left alone where the feet hang and go with the lifter', () => {
    expect(steadyCameras(shaken(true), options).body.path).toEqual(lost);
  });
});

describe('a camera that stands', () => {
  it('leaves nothing, and its path as it is', () => {
    const still: CameraPath = { moves: false, removable: true, frames: [], uprights: [] };
    const recording = { ...recorded(swayingHand(1, 0), { room: false }), camera: still };
    const { body, disc } = steadyCameras(recording, options);
    expect(body).toEqual({ path: still, wanderPx: 0 });
    expect(disc).toEqual({ path: still, wanderPx: 0 });
  });
});
