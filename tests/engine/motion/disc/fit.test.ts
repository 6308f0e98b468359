import { describe, expect, it } from 'vitest';
import { DiscFollower } from '../../../../engine/motion/disc/discFollower.ts';
import { learnClicked } from '../../../../engine/motion/disc/learnClicked.ts';
import { learnDisc } from '../../../../engine/motion/disc/learnDisc.ts';
import { roundDisc } from '../../../../engine/motion/disc/shape.ts';
import { type DrawnDisc, noisy, room, withDiscs } from './drawDisc.ts';

const wall = room({ width: 480, height: 320 }, 3);
/** Sub-pixel places and sizes, spread over a pixel. */
const discs: readonly DrawnDisc[] = Array.from({ length: 6 }, (_, index) => ({
  xPx: 230 + ((index * 0.37) % 1),
  yPx: 160 + ((index * 0.61) % 1),
  radiusPx: 34 + 5.3 * index,
}));

type Found = { readonly xPx: number; readonly yPx: number; readonly radiusPx: number };

const placeOff = (found: Found | undefined, { xPx, yPx }: DrawnDisc): number =>
  found ? Math.hypot(found.xPx - xPx, found.yPx - yPx) : Number.POSITIVE_INFINITY;

const radiusOff = (found: Found | undefined, { radiusPx }: DrawnDisc): number =>
  found ? Math.abs(found.radiusPx - radiusPx) : Number.POSITIVE_INFINITY;

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

/** Learns a disc from a circle that is a little beside it. */
const learntBeside = (picture: ReturnType<typeof room>, { xPx, yPx, radiusPx }: DrawnDisc) =>
  learnDisc(picture, roundDisc(xPx + 1.2, yPx - 0.8, radiusPx * 1.03));

function followed(first: DrawnDisc, picture: ReturnType<typeof room>): Found | undefined {
  const learnt = learntBeside(withDiscs(wall, [first]), first);
  if (!learnt) return undefined;
  const follower = new DiscFollower(learnt, 0);
  const sighting = follower.follow(picture, 1 / 30);
  return sighting ? { ...sighting, radiusPx: follower.shape.radiusPx } : undefined;
}

describe('a disc in front of a textured wall', () => {
  it('is fitted to a tenth of a pixel, place and radius', () => {
    const found = discs.map((disc) => learntBeside(withDiscs(wall, [disc]), disc)?.shape);
    expect(rms(discs.map((disc, index) => placeOff(found[index], disc)))).toBeLessThan(0.05);
    expect(rms(discs.map((disc, index) => radiusOff(found[index], disc)))).toBeLessThan(0.1);
  });

  it('is followed to a tenth of a pixel where a post hides half of it', () => {
    const off = discs.map((disc) => {
      const moved = { ...disc, xPx: disc.xPx + 1.3, yPx: disc.yPx + 2.1 };
      const post = { fromPx: moved.xPx, toPx: moved.xPx + 1.2 * disc.radiusPx };
      return placeOff(followed(disc, withDiscs(wall, [moved], [post])), moved);
    });
    expect(rms(off)).toBeLessThan(0.1);
  });

  it('is followed to a tenth of a pixel, place and radius, in a grainy picture', () => {
    const found = discs.map((disc, index) => followed(disc, noisy(withDiscs(wall, [disc]), 8, index + 1)));
    expect(rms(discs.map((disc, index) => placeOff(found[index], disc)))).toBeLessThan(0.1);
    expect(rms(discs.map((disc, index) => radiusOff(found[index], disc)))).toBeLessThan(0.1);
  });

  it('is less sure where less of it shows', () => {
    const disc = { xPx: 230.2, yPx: 160.4, radiusPx: 45 };
    const learnt = learntBeside(withDiscs(wall, [disc]), disc);
    if (!learnt) throw new Error('no disc was learnt');
    const whole = new DiscFollower(learnt, 0).follow(withDiscs(wall, [disc]), 1 / 30);
    const half = new DiscFollower(learnt, 0).follow(withDiscs(wall, [disc], [{ fromPx: 230, toPx: 300 }]), 1 / 30);
    expect(whole?.confidence).toBeGreaterThan(0.9);
    expect(half?.confidence).toBeLessThan(0.7);
  });

  it('is not seen behind a post wider than itself', () => {
    const disc = { xPx: 230.2, yPx: 160.4, radiusPx: 45 };
    expect(followed(disc, withDiscs(wall, [disc], [{ fromPx: 170, toPx: 290 }]))).toBeUndefined();
  });
});

describe('a click', () => {
  const disc = { xPx: 231.3, yPx: 160.6, radiusPx: 44.2 };
  const picture = withDiscs(wall, [disc]);

  it.each([
    ['3 px to the right', 3, 0],
    ['3 px above', 0, -3],
    ['0.4 of the radius to the left', -0.4 * 44.2, 0],
    ['0.4 of the radius down and right', 0.28 * 44.2, 0.28 * 44.2],
  ])('%s of the centre snaps to the disc', (_, across, down) => {
    const learnt = learnClicked(picture, { at: { xPx: disc.xPx + across, yPx: disc.yPx + down } });
    expect(placeOff(learnt?.shape, disc)).toBeLessThan(0.1);
    expect(radiusOff(learnt?.shape, disc)).toBeLessThan(0.1);
  });

  it('with a radius drawn out 10 % too large snaps to the disc', () => {
    const learnt = learnClicked(picture, {
      at: { xPx: disc.xPx - 2, yPx: disc.yPx + 2 },
      radiusPx: disc.radiusPx * 1.1,
    });
    expect(radiusOff(learnt?.shape, disc)).toBeLessThan(0.1);
  });

  it('on the wall far from it is no disc', () => {
    expect(learnClicked(picture, { at: { xPx: 60, yPx: 60 } })).toBeNull();
  });
});

describe('a disc that is turned out of square', () => {
  it.each([0, 30, 90, 135])('its longest diameter at %d°: the ratio to 0.01, the direction to 5°', (majorAxisDeg) => {
    const disc = { xPx: 231.3, yPx: 90.6, radiusPx: 46.3, axisRatio: 0.94, majorAxisDeg };
    const learnt = learntBeside(withDiscs(wall, [disc]), disc);
    if (!learnt) throw new Error('no disc was learnt');
    const follower = new DiscFollower(learnt, 0);
    for (let frame = 0; frame < 12; frame += 1) {
      follower.follow(withDiscs(wall, [{ ...disc, yPx: disc.yPx + 4 * frame }]), frame / 30);
    }
    const outline = follower.outline();
    expect(Math.abs(outline.axisRatio - 0.94)).toBeLessThan(0.01);
    const turn = (((outline.majorAxisDeg - majorAxisDeg) % 180) + 180) % 180;
    expect(Math.min(turn, 180 - turn)).toBeLessThan(5);
    expect(Math.abs(outline.radiusPx - 46.3)).toBeLessThan(0.2);
  });

  it('square on has a ratio of 1', () => {
    const disc = { xPx: 231.3, yPx: 160.6, radiusPx: 46.3 };
    expect(learntBeside(withDiscs(wall, [disc]), disc)?.shape.axisRatio).toBeGreaterThan(0.99);
  });
});
