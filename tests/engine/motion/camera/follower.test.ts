import { describe, expect, it } from 'vitest';
import { CameraFollower } from '../../../../engine/motion/camera/cameraFollower.ts';
import { steadied } from '../../../../engine/motion/camera/cameraPath.ts';
import type { GreyPicture } from '../../../../engine/motion/picture/picture.ts';
import type { CameraPath } from '../../../../engine/recording/recording.ts';
import { blank, drawn, noisy } from '../disc/drawDisc.ts';
import { atRest, busyWall, busyWallAt, type Pose, posed } from './scenes.ts';

const size = { width: 480, height: 270 };

function followed(frames: number, pictureAt: (frame: number) => GreyPicture) {
  const follower = new CameraFollower(size);
  const shifts = Array.from({ length: frames }, (_, frame) => follower.next(pictureAt(frame)));
  return { path: follower.finish(), shifts };
}

describe('a camera that is shifted, turned and brought nearer', () => {
  const poseAt = (frame: number): Pose => ({
    rightPx: 1.1 * frame,
    downPx: -0.7 * frame,
    turnDeg: 0.12 * frame,
    scale: 1 + 0.0015 * frame,
  });
  const frames = 14;
  const { path, shifts } = followed(frames, (frame) => busyWall(size, poseAt(frame)));

  it('is undone to 0.2 px anywhere in the picture', () => {
    expect(path).toMatchObject({ moves: true, removable: true });
    expect(path.frames).toHaveLength(frames);
    const places = [
      { xPx: 90, yPx: 60 },
      { xPx: 400, yPx: 220 },
      { xPx: 240, yPx: 135 },
    ];
    for (let frame = 0; frame < frames; frame += 1) {
      for (const place of places) {
        const back = steadied(path, frame, posed(size, poseAt(frame), place));
        expect(Math.hypot(back.xPx - place.xPx, back.yPx - place.yPx)).toBeLessThan(0.2);
      }
    }
  });

  it('tells as it goes how far the middle has moved', () => {
    shifts.forEach((shift, frame) => {
      const { rightPx, downPx } = poseAt(frame);
      expect(Math.hypot(shift.xPx - rightPx, shift.yPx - downPx)).toBeLessThan(0.2);
    });
  });
});

describe('a camera that turns far, zooms or swings', () => {
  const places = [
    { xPx: 200, yPx: 100 },
    { xPx: 280, yPx: 170 },
  ];
  const missPx = (path: CameraPath, frame: number, pose: Pose) =>
    Math.max(
      ...places.map((place) => {
        const back = steadied(path, frame, posed(size, pose, place));
        return Math.hypot(back.xPx - place.xPx, back.yPx - place.yPx);
      }),
    );

  it('is undone when it rolls by 8°', () => {
    const poseAt = (frame: number): Pose => ({ ...atRest, turnDeg: 0.4 * frame });
    const { path } = followed(21, (frame) => busyWall(size, poseAt(frame)));
    expect(path).toMatchObject({ moves: true, removable: true });
    expect(missPx(path, 20, poseAt(20))).toBeLessThan(0.4);
  });

  it.each([1.4, 0.75])('is undone when the zoom jumps to %d times', (scale) => {
    const poseAt = (frame: number): Pose => (frame < 12 ? atRest : { ...atRest, scale });
    const { path } = followed(36, (frame) => busyWall(size, poseAt(frame)));
    expect(path).toMatchObject({ moves: true, removable: true });
    expect(missPx(path, 5, atRest)).toBeLessThan(0.2);
    expect(missPx(path, 35, poseAt(35))).toBeLessThan(0.4);
  });

  it('is undone when it pans until little of the first picture is left', () => {
    const poseAt = (frame: number): Pose => ({ ...atRest, rightPx: -4 * frame });
    const { path } = followed(96, (frame) => busyWall(size, poseAt(frame)));
    expect(path).toMatchObject({ moves: true, removable: true });
    expect(missPx(path, 95, poseAt(95))).toBeLessThan(1.5);
  });
});

describe('a camera that is knocked after a while', () => {
  it('is noticed, and undone from then on', () => {
    const knocked = { ...atRest, rightPx: 5, downPx: 2 };
    const still = busyWall(size, atRest);
    const moved = busyWall(size, knocked);
    const { path } = followed(45, (frame) => (frame < 20 ? still : moved));
    expect(path).toMatchObject({ moves: true, removable: true });
    const before = steadied(path, 5, { xPx: 240, yPx: 135 });
    expect(Math.hypot(before.xPx - 240, before.yPx - 135)).toBeLessThan(0.2);
    const after = steadied(path, 40, { xPx: 245, yPx: 137 });
    expect(Math.hypot(after.xPx - 240, after.yPx - 135)).toBeLessThan(0.2);
  });
});

describe('a camera that stands still', () => {
  /** Somebody large and textured in front of the wall, walking to the right. */
  const withSomebody = (leftPx: number, widthPx: number) =>
    drawn(size, (xPx, yPx) =>
      xPx >= leftPx && xPx < leftPx + widthPx && yPx > 20 ? busyWallAt(xPx - leftPx, yPx, 9) : busyWallAt(xPx, yPx),
    );

  it.each([120, 220])('does not move when somebody %d px wide walks through the picture', (widthPx) => {
    const { path, shifts } = followed(24, (frame) => withSomebody(40 + 4 * frame, widthPx));
    expect(path.moves).toBe(false);
    expect(path.frames).toEqual([]);
    expect(shifts.every(({ xPx, yPx }) => Math.hypot(xPx, yPx) < 0.4)).toBe(true);
  });

  it('does not move in front of a blank wall, of a grainy one, or in the dark', () => {
    expect(followed(12, () => blank(size, 120)).path.moves).toBe(false);
    expect(followed(12, (frame) => noisy(blank(size, 120), 3, frame + 1)).path.moves).toBe(false);
    expect(followed(12, () => blank(size, 0)).path.moves).toBe(false);
  });

  it('does not move in a grainy picture', () => {
    const wall = busyWall(size, atRest);
    expect(followed(16, (frame) => noisy(wall, 5, frame + 1)).path.moves).toBe(false);
  });

  it('leaves places where they are', () => {
    const wall = busyWall(size, atRest);
    expect(steadied(followed(8, () => wall).path, 5, { xPx: 12.3, yPx: 45.6 })).toEqual({ xPx: 12.3, yPx: 45.6 });
  });
});
