import { describe, expect, it } from 'vitest';
import { DiscTracker, type TrackedDisc } from '../../../../engine/motion/disc/discTracker.ts';
import { learnClicked } from '../../../../engine/motion/disc/learnClicked.ts';
import type { GreyPicture } from '../../../../engine/motion/picture/picture.ts';
import { type DrawnDisc, drawn, noisy, room, wallAt, withDiscs } from './drawDisc.ts';

const wall = room({ width: 320, height: 200 }, 3);
const still = { xPx: 0, yPx: 0 };
const degrees = (turn: number) => (turn * Math.PI) / 180;

function tracked(frames: number, pictureAt: (frame: number) => GreyPicture): TrackedDisc {
  const tracker = new DiscTracker();
  for (let frame = 0; frame < frames; frame += 1) tracker.next(pictureAt(frame), frame / 30, still);
  const found = tracker.finish();
  if (!found) throw new Error('no disc was found');
  return found;
}

/** A second of standing, then 60 px down and up again within 60 frames. */
const squatted = (shape: Omit<DrawnDisc, 'xPx' | 'yPx'>) => (frame: number) => ({
  ...shape,
  xPx: 180.4,
  yPx: frame < 30 ? 60.2 : 90.2 - 30 * Math.cos(((frame - 30) / 60) * 2 * Math.PI),
});

/** Root of the mean square of how far the disc was from where it was drawn, over the frames it was seen in. */
function rmsOff({ firstFrame, sightings }: TrackedDisc, drawnAt: (frame: number) => DrawnDisc): number {
  const squares = sightings.flatMap((sighting, index) => {
    const { xPx, yPx } = drawnAt(firstFrame + index);
    return sighting ? [(sighting.xPx - xPx) ** 2 + (sighting.yPx - yPx) ** 2] : [];
  });
  return Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / squares.length);
}

describe('a disc that is turned away from the camera', () => {
  it.each([
    ['25°, ringed', 25, 92, {}],
    ['40°, ringed', 40, 84, {}],
    ['58°, ringed', 58, 95, {}],
    ['30°, plain and dark', 30, 90, { plain: 25 }],
    ['50°, plain and dark', 50, 98, { plain: 25 }],
  ])('by %s is followed: place to 0.3 px, radius to a fiftieth, turn to 3°', (_, turnDeg, majorAxisDeg, looks) => {
    const drawnAt = squatted({ radiusPx: 31.3, axisRatio: Math.cos(degrees(turnDeg)), majorAxisDeg, ...looks });
    const found = tracked(90, (frame) => noisy(withDiscs(wall, [drawnAt(frame)]), 3, frame + 1));
    expect(found.sightings.filter((sighting) => sighting !== null).length).toBeGreaterThan(45);
    expect(rmsOff(found, drawnAt)).toBeLessThan(0.3);
    expect(Math.abs(found.outline.radiusPx / 31.3 - 1)).toBeLessThan(0.02);
    const seenTurnDeg = (Math.acos(found.outline.axisRatio) * 180) / Math.PI;
    expect(Math.abs(seenTurnDeg - turnDeg)).toBeLessThan(3);
  });
});

describe('something round that moves up and down', () => {
  /** An ellipse with a face of light and dark patches, as a head or a shoulder has. */
  const patched = (frame: number) => {
    const { xPx, yPx } = squatted({ radiusPx: 24 })(frame);
    return drawn({ width: 320, height: 200 }, (x, y) => {
      const within = Math.hypot((x - xPx) / 0.75, y - yPx) <= 24;
      return within ? 2.4 * (wallAt(x - xPx + 500, y - yPx + 500, 7) - 90) : wallAt(x, y, 3);
    });
  };

  it('is no disc when its face is uneven', () => {
    const tracker = new DiscTracker();
    for (let frame = 0; frame < 90; frame += 1) tracker.next(patched(frame), frame / 30, still);
    expect(tracker.finish()).toBeNull();
  });
});

describe('a click on a turned disc', () => {
  const disc = { xPx: 171.3, yPx: 100.6, radiusPx: 34.2, axisRatio: 0.64, majorAxisDeg: 94 };
  const picture = withDiscs(wall, [disc]);

  it.each([
    ['on its hub', 0, 0],
    ['beside its hub', 4, -6],
  ])('%s snaps to its rim', (_, across, down) => {
    const learnt = learnClicked(picture, { at: { xPx: disc.xPx + across, yPx: disc.yPx + down } });
    expect(Math.hypot((learnt?.shape.xPx ?? 0) - disc.xPx, (learnt?.shape.yPx ?? 0) - disc.yPx)).toBeLessThan(0.2);
    expect(Math.abs((learnt?.shape.radiusPx ?? 0) - disc.radiusPx)).toBeLessThan(0.4);
    expect(Math.abs((learnt?.shape.axisRatio ?? 0) - disc.axisRatio)).toBeLessThan(0.02);
  });

  it('with a box a tenth too large snaps to its rim', () => {
    const box = { leftPx: 147, topPx: 64, rightPx: 197, bottomPx: 138 };
    const learnt = learnClicked(picture, { at: { xPx: 172, yPx: 101 }, box });
    expect(Math.abs((learnt?.shape.radiusPx ?? 0) - disc.radiusPx)).toBeLessThan(0.4);
    expect(Math.abs((learnt?.shape.axisRatio ?? 0) - disc.axisRatio)).toBeLessThan(0.02);
  });
});
