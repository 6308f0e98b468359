import { describe, expect, it } from 'vitest';
import { DiscTracker, type TrackedDisc } from '../../../../engine/motion/disc/discTracker.ts';
import type { GreyPicture } from '../../../../engine/motion/picture/picture.ts';
import { blank, type DrawnDisc, noisy, room, withDiscs } from './drawDisc.ts';

const size = { width: 480, height: 270 };
const wall = room(size, 3);
const still = { xPx: 0, yPx: 0 };

function tracked(frames: number, pictureAt: (frame: number) => GreyPicture): TrackedDisc | null {
  const tracker = new DiscTracker();
  for (let frame = 0; frame < frames; frame += 1) tracker.next(pictureAt(frame), frame / 30, still);
  return tracker.finish();
}

/** 60 px down and up again within 60 frames. */
const lifted = (radiusPx: number) => (frame: number) => ({
  xPx: 280.4,
  yPx: 130 + 60 * Math.sin((frame / 60) * 2 * Math.PI),
  radiusPx,
});

/** The furthest a place is from where the disc was drawn, over the frames it was seen in. */
function furthestOff({ firstFrame, sightings }: TrackedDisc, drawnAt: (frame: number) => DrawnDisc): number {
  const off = sightings.map((sighting, index) => {
    const { xPx, yPx } = drawnAt(firstFrame + index);
    return sighting ? Math.hypot(sighting.xPx - xPx, sighting.yPx - yPx) : 0;
  });
  return Math.max(...off);
}

describe('of a disc on the wall and one that moves', () => {
  it.each([
    ['as large as it', 34, 33.3],
    ['larger than it', 45, 30.3],
  ])('the moving one is followed where the one on the wall is %s', (_, onWallPx, movingPx) => {
    const drawnAt = lifted(movingPx);
    const found = tracked(50, (frame) =>
      withDiscs(wall, [{ xPx: 90.3, yPx: 150.2, radiusPx: onWallPx }, drawnAt(frame)]),
    );
    if (!found) throw new Error('no disc was found');
    expect(found.sightings.every((sighting) => sighting !== null)).toBe(true);
    expect(furthestOff(found, drawnAt)).toBeLessThan(0.1);
    expect(Math.abs(found.outline.radiusPx - movingPx)).toBeLessThan(0.1);
  });
});

describe('a large disc', () => {
  it('is followed by its rim, never by its hub or its ring', () => {
    const drawnAt = (frame: number) => ({ ...lifted(64)(frame), mixedIn: 'light' }) as const;
    const found = tracked(40, (frame) => withDiscs(wall, [drawnAt(frame)]));
    expect(Math.abs((found?.outline.radiusPx ?? 0) - 64)).toBeLessThan(0.2);
  });
});

describe('where no disc moves', () => {
  it.each([
    ['an empty room', () => wall],
    ['a grainy empty room', (frame: number) => noisy(wall, 6, frame + 1)],
    ['a room with a disc on the wall', () => withDiscs(wall, [{ xPx: 280.4, yPx: 130, radiusPx: 33.3 }])],
    ['a black picture', () => blank(size, 0)],
  ])('%s has none', (_, pictureAt) => {
    expect(tracked(40, pictureAt)).toBeNull();
  });
});

describe('a disc that leaves the picture for a while', () => {
  const drawnAt = (frame: number) => ({
    xPx: 280.4,
    yPx: frame < 60 ? 130 - 220 * Math.sin((frame / 60) * Math.PI) : 130,
    radiusPx: 33.3,
  });
  const found = tracked(80, (frame) => withDiscs(wall, [drawnAt(frame)]));
  const sightings = found?.sightings ?? [];

  it('is nowhere while it is out', () => {
    const out = sightings.filter((_, frame) => drawnAt(frame).yPx < -33.3);
    expect(out.length).toBeGreaterThan(20);
    expect(out.every((sighting) => sighting === null)).toBe(true);
  });

  it('is seen before and found again after, where it is', () => {
    expect(sightings.slice(0, 10).every((sighting) => sighting !== null)).toBe(true);
    expect(sightings.slice(62).every((sighting) => sighting !== null)).toBe(true);
    expect(found && furthestOff(found, drawnAt)).toBeLessThan(0.5);
  });
});

describe('a camera that moves', () => {
  it('does not make a mover of a disc on the wall', () => {
    const tracker = new DiscTracker();
    for (let frame = 0; frame < 40; frame += 1) {
      const shift = { xPx: 1.2 * frame, yPx: 0 };
      const picture = withDiscs(wall, [{ xPx: 120.4 + shift.xPx, yPx: 130, radiusPx: 33.3 }]);
      tracker.next(picture, frame / 30, shift);
    }
    expect(tracker.finish()).toBeNull();
  });
});
