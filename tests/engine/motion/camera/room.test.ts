import { describe, expect, it } from 'vitest';
import { cameraAt, floorNearness } from '../../../../engine/motion/camera/atDepth.ts';
import { steadied } from '../../../../engine/motion/camera/cameraPath.ts';
import { type Look, roomOfLooks } from '../../../../engine/motion/camera/roomOfLooks.ts';
import { fitSimilarity, type Similarity, unmoved } from '../../../../engine/motion/camera/similarity.ts';
import type { CameraPath, PointPx } from '../../../../engine/recording/recording.ts';
import { whiteNoise } from '../signal/whiteNoise.ts';
import {
  cameraHeightM,
  focalPx,
  type Held,
  middle,
  type Place,
  roomPlaces,
  shown,
  shownAt,
  swayingHand,
} from './handHeld.ts';

const frames = 240;
const timeOf = (frame: number) => frame / 30;
const wholeRoom = roomPlaces({ wallM: 6, floor: true });

type Filmed = {
  readonly places?: readonly Place[];
  readonly heldAt: (timeS: number) => Held;
  /** Places that go their own way: how far to the right, in metres. */
  readonly strollM?: (place: number, timeS: number) => number;
};

/** What patches on the places show to a held camera, each found to a tenth of a pixel. */
function filmed({ places = wholeRoom, heldAt, strollM = () => 0 }: Filmed): CameraPath['room'] | null {
  const noise = whiteNoise(2 * places.length * frames, 7);
  const marks = places.map((place) => ({ ...shownAt(heldAt(0), place), frame: 0 }));
  const looks: Look[] = [];
  let near: Similarity = unmoved;
  for (let frame = 0; frame < frames; frame += 1) {
    const seen = places.map((place, index): PointPx | null => {
      const moved = { ...place, x: place.x + strollM(index, timeOf(frame)) };
      const { xPx, yPx } = shownAt(heldAt(timeOf(frame)), moved);
      if (Math.min(xPx, shown.width - xPx, yPx, shown.height - yPx) < 9) return null;
      const at = 2 * (frame * places.length + index);
      return { xPx: xPx + 0.1 * (noise[at] ?? 0), yPx: yPx + 0.1 * (noise[at + 1] ?? 0) };
    });
    const pairs = marks.flatMap((from, index) => {
      const to = seen[index];
      return to ? [{ from, to }] : [];
    });
    const here =
      frame === 0 ? unmoved : (fitSimilarity(pairs, zoomedTo(near, heldAt(timeOf(frame)).zoom))?.similarity ?? null);
    near = here ?? near;
    looks.push({ frame, here, places: frame === 0 ? marks : seen });
  }
  return roomOfLooks(looks, { size: shown, factor: 1, frames, marks });
}

/** A similarity with the scale of a zoom, about the picture's middle. */
function zoomedTo(near: Similarity, zoom: number): Similarity {
  const by = zoom / Math.hypot(near.a, near.b);
  return Math.abs(by - 1) < 0.1
    ? near
    : {
        ...{ a: near.a * by, b: near.b * by },
        shiftXPx: middle.xPx + (near.shiftXPx - middle.xPx) * by,
        shiftYPx: middle.yPx + (near.shiftYPx - middle.yPx) * by,
      };
}

/** A load a metre below the camera's height less something, 3.4 m away, that goes up and down by half a metre. */
const footM: Place = { x: -0.1, y: cameraHeightM, z: 3.4 };
const loadAt = (timeS: number): Place => ({ x: 0.1, y: 0.25 - 0.25 * Math.cos(2 * timeS), z: 3.4 });
const pxPerM = focalPx / 3.4;

/** How far the load's steadied height strays from where a still camera shows it: standard deviation in millimetres. */
function strayMm(camera: CameraPath, heldAt: (timeS: number) => Held): number {
  const strays = Array.from({ length: frames }, (_, frame) => {
    const load = loadAt(timeOf(frame));
    const back = steadied(camera, frame, shownAt(heldAt(timeOf(frame)), load));
    return ((back.yPx - shownAt(heldAt(0), load).yPx) / pxPerM) * 1000;
  });
  const mean = strays.reduce((sum, stray) => sum + stray, 0) / frames;
  return Math.sqrt(strays.reduce((sum, stray) => sum + (stray - mean) ** 2, 0) / frames);
}

function steadyAtFeet(room: NonNullable<CameraPath['room']>, heldAt: (timeS: number) => Held): CameraPath {
  const floor = floorNearness(room, shownAt(heldAt(0), footM));
  if (!floor) throw new Error('no floor');
  const places = Array.from({ length: frames }, (_, frame) => shownAt(heldAt(timeOf(frame)), loadAt(timeOf(frame))));
  const path: CameraPath = { moves: true, removable: true, frames: [], uprights: [], room };
  return cameraAt(path, floor.value, places);
}

describe('a camera swaying in somebody’s hands before a wall and a floor', () => {
  it.each([1, 2, 3, 4, 5, 6])('is taken out to 4 mm of 20 to 40 at the depth of the feet (hand %d)', (seed) => {
    const heldAt = swayingHand(seed, 0.015);
    const room = filmed({ heldAt });
    expect(room).not.toBeNull();
    if (room) expect(strayMm(steadyAtFeet(room, heldAt), heldAt)).toBeLessThan(4);
  });

  it('is so even when a third of what is seen walks about', () => {
    const heldAt = swayingHand(8, 0.015);
    const strollM = (place: number, timeS: number) => (place % 3 === 0 ? 0.4 * Math.sin(0.9 * timeS + place) : 0);
    const room = filmed({ heldAt, strollM });
    expect(room).not.toBeNull();
    if (room) expect(strayMm(steadyAtFeet(room, heldAt), heldAt)).toBeLessThan(4);
  });

  it('is so when the zoom jumps', () => {
    const hand = swayingHand(3, 0.015);
    const heldAt = (timeS: number): Held => ({ ...hand(timeS), zoom: timeS < 4 ? 1 : 1.3 });
    const room = filmed({ heldAt });
    expect(room).not.toBeNull();
    if (!room) return;
    expect(Math.exp(room.frames[200]?.zoom ?? 0)).toBeCloseTo(1.3, 2);
    expect(strayMm(steadyAtFeet(room, heldAt), heldAt)).toBeLessThan(4);
  });

  it('tells the floor’s depth at the feet against that of the wall', () => {
    const heldAt = swayingHand(2, 0.025);
    const room = filmed({ heldAt });
    const wall = room?.patches.filter(({ yPx }) => yPx < 150).map(({ nearness }) => nearness) ?? [];
    const floor = room && floorNearness(room, shownAt(heldAt(0), footM));
    const mean = wall.reduce((sum, nearness) => sum + nearness, 0) / wall.length;
    // The wall is 6 m away, the feet 3.4 m.
    expect((floor?.value ?? 0) / mean).toBeGreaterThan(1.4);
    expect((floor?.value ?? 0) / mean).toBeLessThan(2.2);
  });

  it('gives the same each time', () => {
    const heldAt = swayingHand(5, 0.015);
    expect(filmed({ heldAt })).toEqual(filmed({ heldAt }));
  });
});

describe('a room that shows no depth', () => {
  it('is none before a wall alone, where a shift can’t be told from a turn', () => {
    expect(filmed({ places: roomPlaces({ wallM: 6, floor: false }), heldAt: swayingHand(1, 0.015) })).toBeNull();
  });

  it('is none with hardly anything to hold on to', () => {
    expect(filmed({ places: wholeRoom.slice(0, 6), heldAt: swayingHand(1, 0.015) })).toBeNull();
  });
});
