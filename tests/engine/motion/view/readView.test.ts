import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gunzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readView, viewAt } from '../../../../engine/motion/view/readView.ts';
import type { Body } from '../../../../engine/recording/recording.ts';
import { bodiesOf, knownLifter, lifterNames } from '../joints/knownLifter.ts';
import { type Posture, seenFigure, toAndFro } from './figure.ts';

const squat = (share: number): Posture => ({ kneeDeg: 110 * share, leanDeg: 40 * share });
const press = (): Posture => ({ kneeDeg: 0, leanDeg: 0 });
const hinge = (share: number): Posture => ({ kneeDeg: 20 * share, leanDeg: 80 * share });
const onTheBack = (share: number): Posture => ({ kneeDeg: 90, leanDeg: 5 * share, pitchDeg: -90 });
const faceDown = (): Posture => ({ kneeDeg: 5, leanDeg: 0, pitchDeg: 80 });
const onOneSide = (): Posture => ({ kneeDeg: 5, leanDeg: 0, rollDeg: 80 });
const upsideDown = (): Posture => ({ kneeDeg: 5, leanDeg: 0, pitchDeg: 180 });

/** A body as a recording holds it, from tenths of pixels and hundredths. */
const bodyOf = (numbers: readonly number[]): Body =>
  Array.from({ length: numbers.length / 3 }, (_, joint) => ({
    xPx: (numbers[3 * joint] ?? 0) / 10,
    yPx: (numbers[3 * joint + 1] ?? 0) / 10,
    confidence: (numbers[3 * joint + 2] ?? 0) / 100,
  }));

const mirrored = (body: Body | null): Body | null => {
  const order = [0, 2, 1, 4, 3, 6, 5, 8, 7, 10, 9, 12, 11, 14, 13, 16, 15];
  return body && order.flatMap((joint) => body[joint] ?? []).map((joint) => ({ ...joint, xPx: 640 - joint.xPx }));
};

describe('rendered lifters, by what the network says of them', () => {
  /** Turned by 10 degrees, the others square; which way, and from which side, by their truth. */
  const azimuths = { 'split-squat-turned': 80 } as const;

  test.each(lifterNames)('%s is seen from the side, and the way they face', (name) => {
    const lifter = knownLifter(name);
    const read = readView({ frames: bodiesOf(lifter) });
    expect(read).toMatchObject({ view: 'side', facing: lifter.nearSide });
    const azimuthDeg = name in azimuths ? azimuths['split-squat-turned'] : 90;
    expect(Math.abs((read?.azimuthDeg.value ?? 0) - azimuthDeg)).toBeLessThanOrEqual(read?.azimuthDeg.plusMinus ?? 0);
  });

  test.each(lifterNames)('%s mirrored faces the other way, and nothing else changes', (name) => {
    const frames = bodiesOf(knownLifter(name));
    const [straight, other] = [readView({ frames }), readView({ frames: frames.map(mirrored) })];
    expect(other?.facing).toBe(straight?.facing === 'left' ? 'right' : 'left');
    expect(other?.view).toBe(straight?.view);
    expect(other?.azimuthDeg).toEqual(straight?.azimuthDeg);
  });
});

describe('clips whose camera is known', () => {
  const seen: Readonly<Record<string, readonly (readonly number[])[]>> = JSON.parse(
    gunzipSync(readFileSync(path.join(import.meta.dirname, 'recordings', 'seen.json.gz'))).toString(),
  );
  const bodies = (name: string) => (seen[name] ?? []).map(bodyOf);

  // Rendered: the azimuth that the camera was given. Filmed: half-way between side and end, by eye.
  test.each([
    ['squat-hand-held', 'side', 'right', 84],
    ['hinge-hand-held', 'side', 'right', 80],
    ['squat-three-quarter', 'oblique', 'right', 55],
    ['squat-walk-out', 'side', 'left', 90],
    ['squat-no-bar', 'side', 'right', 90],
    ['press-three-quarter-rear', 'oblique', 'right', 140],
    ['filmed-deadlift', 'oblique', 'right', 135],
    ['filmed-squat', 'oblique', 'right', 135],
    ['filmed-body-weight-squat', 'oblique', 'right', 45],
  ] as const)('%s is seen from %s, facing %s, at about %d degrees', (name, view, facing, azimuthDeg) => {
    const read = readView({ frames: bodies(name) });
    expect(read).toMatchObject({ view, facing });
    expect(Math.abs((read?.azimuthDeg.value ?? 999) - azimuthDeg)).toBeLessThanOrEqual(read?.azimuthDeg.plusMinus ?? 0);
    expect(read?.sureness).toBeGreaterThan(0.7);
  });
});

describe('figures seen from all round', () => {
  const azimuth = fc.integer({ min: -180, max: 180 });
  const moves = { squat, press, hinge };

  test.each(Object.entries(moves))('%s: the azimuth lies within its half-width nine times in ten', (_, posture) => {
    const azimuths = Array.from({ length: 72 }, (_, index) => -180 + 5 * index);
    const held = azimuths.filter((azimuthDeg) => {
      const read = readView(seenFigure(toAndFro(posture), { azimuthDeg, seed: azimuthDeg + 500 }));
      const apart = Math.abs((read?.azimuthDeg.value ?? 999) - Math.abs(azimuthDeg));
      return apart <= (read?.azimuthDeg.plusMinus ?? 0) + 0.5;
    });
    expect(held.length).toBeGreaterThanOrEqual(0.9 * azimuths.length);
  });

  test.each(Object.entries(moves))('%s: the view is that of the azimuth, within 12 degrees', (_, posture) => {
    fc.assert(
      fc.property(azimuth, fc.integer({ min: 1, max: 99 }), (azimuthDeg, seed) => {
        const read = readView(seenFigure(toAndFro(posture), { azimuthDeg, seed }));
        if (read === null) return;
        const near = [-12, 0, 12].map((by) => viewAt(Math.min(180, Math.max(0, Math.abs(azimuthDeg) + by))));
        expect(near).toContain(read.view);
      }),
    );
  });

  test.each([-160, -90, -45, 20, 55, 90, 130])(
    'from %d degrees the facing is told, and never the other way',
    (azimuthDeg) => {
      const told = readView(seenFigure(toAndFro(squat), { azimuthDeg }))?.facing;
      expect(told).toBe(azimuthDeg > 0 ? 'right' : 'left');
    },
  );

  test.each([
    [0, 'front'],
    [180, 'rear'],
  ] as const)('straight from %d degrees nobody faces left or right', (azimuthDeg, view) => {
    expect(readView(seenFigure(toAndFro(press), { azimuthDeg }))).toMatchObject({ view, facing: null });
  });
});

describe('bodies that don’t stand', () => {
  test.each([
    ['on the back', onTheBack, 90, 'right'],
    ['on the back', onTheBack, -90, 'left'],
    ['face down', faceDown, 90, 'right'],
    ['face down', faceDown, -90, 'left'],
    ['upside down', upsideDown, -90, 'left'],
  ] as const)('%s, from the side', (_, posture, azimuthDeg, facing) => {
    expect(readView(seenFigure(toAndFro(posture), { azimuthDeg, downDeg: 12 }))).toMatchObject({
      view: 'side',
      facing,
    });
  });

  test('on the back, from the feet: from the front; from the head: from behind', () => {
    expect(readView(seenFigure(toAndFro(onTheBack), { azimuthDeg: 0, downDeg: 20 }))?.view).toBe('front');
    expect(readView(seenFigure(toAndFro(onTheBack), { azimuthDeg: 180, downDeg: 20 }))?.view).toBe('rear');
  });

  test('face down, from the head: from the front', () => {
    expect(readView(seenFigure(toAndFro(faceDown), { azimuthDeg: 0, downDeg: 20 }))?.view).toBe('front');
  });

  test('on one side, seen from its front', () => {
    expect(readView(seenFigure(toAndFro(onOneSide), { azimuthDeg: 0 }))?.view).toBe('front');
  });

  test('on a bench, half-way between side and feet', () => {
    expect(readView(seenFigure(toAndFro(onTheBack), { azimuthDeg: 45, downDeg: 15 }))?.view).toBe('oblique');
  });
});

describe('what the network does wrong', () => {
  test('left taken for right in one frame of six changes nothing', () => {
    const { frames } = seenFigure(toAndFro(squat), { azimuthDeg: 45 });
    const swap = (body: Body): Body =>
      [0, 2, 1, 4, 3, 6, 5, 8, 7, 10, 9, 12, 11, 14, 13, 16, 15].flatMap((joint) => body[joint] ?? []);
    const some = frames.map((body, index) => (index % 6 === 0 ? swap(body) : body));
    expect(readView({ frames: some })).toMatchObject({ view: 'oblique', facing: 'right' });
  });

  test('hips and legs out of the picture: the shoulders and the face tell', () => {
    const { frames } = seenFigure(toAndFro(press), { azimuthDeg: 0 });
    const cut = frames.map((body) => body.map((joint, index) => (index > 12 ? { ...joint, confidence: 0.05 } : joint)));
    expect(readView({ frames: cut })?.view).toBe('front');
  });

  test('nobody, or somebody in four frames: no view', () => {
    const { frames } = seenFigure(toAndFro(squat), { azimuthDeg: 90 });
    expect(readView({ frames: frames.map(() => null) })).toBeNull();
    expect(readView({ frames: frames.slice(0, 4) })).toBeNull();
  });
});
