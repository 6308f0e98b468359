import { describe, expect, it } from 'vitest';
import { CameraFollower } from '../../../../engine/motion/camera/cameraFollower.ts';
import { plumbAt } from '../../../../engine/motion/camera/cameraPath.ts';
import type { GreyPicture } from '../../../../engine/motion/picture/picture.ts';
import type { Upright } from '../../../../engine/recording/recording.ts';
import { postRoom } from './scenes.ts';

const size = { width: 960, height: 540 };
const columns = [100, 300, 520, 700, 880];

function uprightsIn(picture: GreyPicture): readonly Upright[] {
  const follower = new CameraFollower(picture);
  follower.next(picture);
  return follower.finish().uprights;
}

describe('a room with posts', () => {
  it.each([3, -2, 0])('under a camera rolled by %d°: they lean by that everywhere, to 0.2°', (rollDeg) => {
    const uprights = uprightsIn(
      postRoom(
        size,
        columns.map((xPx) => ({ xPx, leanDeg: rollDeg })),
      ),
    );
    for (const xPx of [100, 480, 860]) {
      expect(Math.abs((plumbAt(uprights, xPx, size.width) ?? 99) - rollDeg)).toBeLessThan(0.2);
    }
  });

  it('that converge, as when a camera looks up: the lean is read where the bar is', () => {
    const leanAt = (xPx: number) => 1 - (4 * (xPx - 480)) / 960;
    const uprights = uprightsIn(
      postRoom(
        size,
        columns.map((xPx) => ({ xPx, leanDeg: leanAt(xPx) })),
      ),
    );
    for (const xPx of [150, 480, 800]) {
      expect(Math.abs((plumbAt(uprights, xPx, size.width) ?? 99) - leanAt(xPx))).toBeLessThan(0.2);
    }
  });
});

const line = (xPx: number, leanDeg: number, lengthPx = 300): Upright => ({ xPx, yPx: 270, leanDeg, lengthPx });

describe('lines that were found', () => {
  it('tell nothing when there are only two, or none', () => {
    expect(plumbAt([], 480, 960)).toBeNull();
    expect(plumbAt([line(200, 1), line(700, 1)], 480, 960)).toBeNull();
  });

  it('tell nothing when they disagree', () => {
    const anyhow = [line(100, -6), line(320, 5), line(480, -2), line(640, 7), line(860, -5)];
    expect(plumbAt(anyhow, 480, 960)).toBeNull();
  });

  it('outvote one that leans otherwise: a bar against the wall', () => {
    const lines = [line(100, 1), line(300, 1.1), line(500, 0.9), line(700, 1), line(400, 8, 400)];
    expect(plumbAt(lines, 480, 960)).toBeCloseTo(1, 1);
  });
});
