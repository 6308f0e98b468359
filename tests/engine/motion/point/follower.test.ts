import { describe, expect, it } from 'vitest';
import type { GreyPicture } from '../../../../engine/motion/picture/picture.ts';
import { PointFollower } from '../../../../engine/motion/point/pointFollower.ts';
import { busyWallAt } from '../camera/scenes.ts';
import { blank, drawn, noisy, wallAt } from '../disc/drawDisc.ts';

const size = { width: 320, height: 200 };

/** Where the middle of the patch is: 40 px up and down in 40 frames, and slowly to the right. */
const placeAt = (frame: number) => ({
  xPx: 140 + 0.4 * frame,
  yPx: 100 + 40 * Math.sin((frame / 40) * 2 * Math.PI),
});

/** A round textured patch, turned clockwise, in front of a wall; what hides it is drawn last. */
function scene(frame: number, turnDeg: number, hiddenBy?: (xPx: number, yPx: number) => number): GreyPicture {
  const middle = placeAt(frame);
  const turn = (turnDeg * Math.PI) / 180;
  return drawn(size, (xPx, yPx) => {
    const across = xPx - middle.xPx;
    const down = yPx - middle.yPx;
    if (hiddenBy && Math.abs(across) < 45) return hiddenBy(xPx, yPx);
    if (Math.hypot(across, down) > 26) return wallAt(xPx, yPx, 5);
    return busyWallAt(
      2 * (across * Math.cos(turn) + down * Math.sin(turn)),
      2 * (down * Math.cos(turn) - across * Math.sin(turn)),
      17,
    );
  });
}

/** How far off each frame's place is; null where it was not seen. */
function offBy(frames: number, pictureAt: (frame: number) => GreyPicture): (number | null)[] {
  const follower = new PointFollower(pictureAt(0), placeAt(0), 0);
  return Array.from({ length: frames - 1 }, (_, index) => {
    const sighting = follower.follow(pictureAt(index + 1), (index + 1) / 30);
    const { xPx, yPx } = placeAt(index + 1);
    return sighting && Math.hypot(sighting.xPx - xPx, sighting.yPx - yPx);
  });
}

const furthest = (off: readonly (number | null)[]): number => Math.max(...off.map((one) => one ?? 99));

describe('a point on a textured patch', () => {
  it.each([0, 0.5, 2])('is followed while it moves and turns by %f° a frame', (turnDeg) => {
    expect(furthest(offBy(40, (frame) => scene(frame, turnDeg * frame)))).toBeLessThan(0.5);
  });

  it('is followed within a pixel in grainy pictures', () => {
    expect(furthest(offBy(40, (frame) => noisy(scene(frame, frame), 8, frame + 1)))).toBeLessThan(1);
  });

  it('is followed the other way round in time', () => {
    const follower = new PointFollower(scene(20, 20), placeAt(20), 20 / 30);
    for (let frame = 19; frame >= 0; frame -= 1) {
      const sighting = follower.follow(scene(frame, frame), frame / 30);
      const { xPx, yPx } = placeAt(frame);
      expect(sighting && Math.hypot(sighting.xPx - xPx, sighting.yPx - yPx)).toBeLessThan(0.5);
    }
  });
});

describe('a point that is covered for a while', () => {
  it.each([
    ['something plain', () => 150],
    ['something textured', (xPx: number, yPx: number) => busyWallAt(2 * xPx, 2 * yPx, 31)],
    ['something else that is textured', (xPx: number, yPx: number) => busyWallAt(2 * xPx, 2 * yPx, 33)],
  ])('by %s is lost, never somewhere else, and found again', (_, cover) => {
    const off = offBy(32, (frame) => scene(frame, frame, frame >= 12 && frame < 18 ? cover : undefined));
    expect(off.slice(11, 17)).toEqual([null, null, null, null, null, null]);
    expect(furthest(off.slice(0, 11))).toBeLessThan(0.5);
    expect(furthest(off.slice(19))).toBeLessThan(0.5);
  });
});

describe('a point without looks', () => {
  it('is not found in the dark', () => {
    const follower = new PointFollower(scene(0, 0), placeAt(0), 0);
    expect(follower.follow(blank(size, 0), 1 / 30)).toBeNull();
    expect(follower.missed).toBe(1);
  });

  it('on a blank wall is not found again', () => {
    const wall = blank(size, 120);
    expect(new PointFollower(wall, { xPx: 100, yPx: 100 }, 0).follow(wall, 1 / 30)).toBeNull();
  });
});
