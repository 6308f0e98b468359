import { describe, expect, it } from 'vitest';
import { clearest, cropsToTry, lyingIn } from '../../../../../electron/backend/measure/joints/lyingCrops.ts';
import { motionMap } from '../../../../../electron/backend/measure/joints/motionMap.ts';
import type { Round } from '../../../../../electron/backend/measure/joints/personTracks.ts';
import {
  afterFollowing,
  afterTrying,
  type FirstPass,
  isLyingLifter,
} from '../../../../../electron/backend/measure/joints/secondPass.ts';
import { type Body, jointNames, type PointPx } from '../../../../../engine/recording/recording.ts';
import { type DrawnPerson, drawnBody, drawnBytes, networksOf } from './drawnPeople.ts';

const picture = { width: 1280, height: 720 };
const lying: DrawnPerson = { feet: { xPx: 560, yPx: 520 }, heightPx: 330, posture: 'lying' };
const spotter: DrawnPerson = { feet: { xPx: 930, yPx: 640 }, heightPx: 420 };
const seconds = 14;
const looksPerSecond = 10;

/** The bar goes down and up every three seconds by 110 pixels. */
const downAt = (atS: number) => (1 - Math.cos((2 * Math.PI * atS) / 3)) / 2;
const barAt = (frame: number): PointPx => ({ xPx: 800, yPx: 330 + 110 * downAt(frame / looksPerSecond) });

/** Somebody on a bench, whose hands go with the bar. */
function benchPresser(atS: number): Body {
  return drawnBody(lying).map((joint, i) =>
    jointNames[i]?.endsWith('Wrist') ? { ...joint, xPx: 800, yPx: 340 + 110 * downAt(atS) } : joint,
  );
}

/** Following the clip has shown the spotter alone. */
function firstPass(change: Partial<FirstPass> = {}): FirstPass {
  const frames = Array.from({ length: seconds * looksPerSecond }, (_, frame) => frame);
  const looks = frames.map((frame) => ({ frame, atS: frame / looksPerSecond, body: drawnBody(spotter) }));
  const rounds = looks
    .filter(({ frame }) => frame % 7 === 0)
    .map(({ body, ...when }): Round => ({ ...when, people: [body], followed: body }));
  return {
    ...{ looks, rounds, clicks: [], motion: null },
    evidence: { picture, rounds: rounds.length, bar: barAt },
    ...change,
  };
}
const withoutBar = { picture, rounds: 20, bar: () => null };

describe('somebody who lies among people who stand', () => {
  it('is tried for round the bar when nobody who was seen lifts it', () => {
    const { stage, frames } = afterFollowing(firstPass());
    expect(stage.kind).toBe('trying');
    expect(frames.length).toBeGreaterThanOrEqual(3);
    expect(frames.length).toBeLessThanOrEqual(6);
    if (stage.kind !== 'trying') return;
    for (const { leftPx, topPx, sidePx } of stage.crops) {
      expect(leftPx).toBeLessThan(800);
      expect(leftPx + sidePx).toBeGreaterThan(800);
      expect(topPx).toBeLessThan(440);
    }
  });

  it('is tried for where something moves when no bar is known, and not at all when nothing does', () => {
    const evidence = withoutBar;
    expect(afterFollowing(firstPass({ evidence, motion: { xPx: 700, yPx: 400 } })).stage.kind).toBe('trying');
    expect(afterFollowing(firstPass({ evidence })).stage.kind).toBe('revisiting');
  });

  it('is not tried for while somebody who was seen goes up and down with the bar', () => {
    const looks = firstPass().looks.map((look) => ({ ...look, body: benchPresser(look.atS) }));
    const rounds = looks
      .filter(({ frame }) => frame % 7 === 0)
      .map(({ body, ...when }): Round => ({ ...when, people: [body, drawnBody(spotter)], followed: body }));
    const { stage, frames } = afterFollowing(firstPass({ looks, rounds }));
    expect([stage.kind, frames]).toEqual(['revisiting', []]);
  });

  it('is found by the crops that show somebody who lies, and then looked at throughout', async () => {
    const people = [spotter, lying];
    const networks = networksOf({ ...picture, people });
    const first = firstPass();
    const next = afterFollowing(first);
    if (next.stage.kind !== 'trying') throw new Error('nothing is tried');
    const bytes = drawnBytes(picture);
    for (const frame of next.frames) {
      const crops = next.stage.crops;
      next.stage.tried.set(frame, await lyingIn(networks, { bytes, size: picture }, { crops, until: 'all' }));
    }
    const { stage, frames } = afterTrying(first, next.stage);
    expect(frames).toHaveLength(first.looks.length);
    if (stage.kind !== 'lying') throw new Error('nobody lies');
    const { crops } = stage;
    networks.asked.length = 0;
    const body = clearest(await lyingIn(networks, { bytes, size: picture }, { crops, until: 'clear' }));
    // The first crop shows them clearly, so that the others are not looked at.
    expect(networks.asked).toEqual(['one']);
    const hip = body?.[jointNames.indexOf('leftHip')];
    const drawn = drawnBody(lying)[jointNames.indexOf('leftHip')];
    expect(Math.abs((hip?.xPx ?? 0) - (drawn?.xPx ?? 0))).toBeLessThan(10);
  });

  it('is given up where no crop shows anybody who lies', () => {
    const first = firstPass();
    const crops = cropsToTry({ xPx: 800, yPx: 400 }, picture);
    const { stage } = afterFollowing(first);
    if (stage.kind !== 'trying') throw new Error('nothing is tried');
    for (const frame of [10, 50, 90])
      stage.tried.set(
        frame,
        crops.map(() => null),
      );
    expect(afterTrying(first, stage).stage.kind).toBe('revisiting');
  });

  it('is the lifter when the hands go with the bar, and not when nothing of them does', () => {
    const first = firstPass();
    const seen = (body: (atS: number) => Body) => first.looks.map((look) => ({ ...look, body: body(look.atS) }));
    expect(isLyingLifter(seen(benchPresser), first)).toBe(true);
    expect(
      isLyingLifter(
        seen(() => drawnBody(lying)),
        first,
      ),
    ).toBe(false);
    expect(
      isLyingLifter(
        seen((atS) => benchPresser(atS + 1.5)),
        first,
      ),
    ).toBe(false);
  });
});

it.each([
  ['lies', 'lying', true],
  ['stands', 'standing', false],
  ['hangs head down', 'onHands', false],
] as const)('a crop shows somebody who %s: %s, %s', async (_, posture, isFound) => {
  const person = { ...lying, feet: { xPx: 640, yPx: 500 }, posture };
  const networks = networksOf({ ...picture, people: [person] });
  const crops = [{ leftPx: 500, topPx: 100, sidePx: 500 }];
  const bytes = drawnBytes(picture);
  const [body] = await lyingIn(networks, { bytes, size: picture }, { crops, until: 'all' });
  expect(body !== null).toBe(isFound);
});

describe('where something moves', () => {
  const size = { width: 320, height: 180 };
  const still = drawnBytes(size);
  const withBlock = (xPx: number, yPx: number) => {
    const bytes = still.slice();
    for (let y = yPx; y < yPx + 20; y += 1) bytes.fill(230, y * size.width + xPx, y * size.width + xPx + 20);
    return bytes;
  };

  it('is the middle of what goes to and fro', () => {
    const map = motionMap(size);
    for (let i = 0; i < 40; i += 1) map.add({ bytes: withBlock(200, Math.round(70 + 30 * Math.sin(i))) });
    expect(map.middle()?.xPx).toBeGreaterThan(195);
    expect(map.middle()?.xPx).toBeLessThan(225);
    expect(map.middle()?.yPx).toBeGreaterThan(65);
    expect(map.middle()?.yPx).toBeLessThan(95);
  });

  it('is nowhere in a still picture, nor in one that moves as a whole', () => {
    const map = motionMap(size);
    const shaken = motionMap(size);
    for (let i = 0; i < 40; i += 1) {
      map.add({ bytes: still });
      shaken.add({ bytes: still.map((grey) => (i % 2 === 0 ? grey : grey ^ 31)) });
    }
    expect(map.middle()).toBeNull();
    expect(shaken.middle()).toBeNull();
  });
});
