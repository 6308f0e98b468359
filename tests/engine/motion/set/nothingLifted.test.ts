import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import { measureSet } from '../../../../engine/motion/set/measureSet.ts';
import type { Body } from '../../../../engine/recording/recording.ts';
import { setUpSchema } from '../../../../engine/recording/setUp.ts';
import { shipped } from '../../../seeds/shippedCatalogue.ts';
import { evenTimes } from '../reps/lifts.ts';
import { drawnBody } from '../source/drawnLifter.ts';
import { type Doing, talkingBodies } from './talkers.ts';

type Seen = { readonly timesS: readonly number[]; readonly frames: readonly Body[] };

/** What is measured of bodies alone as an exercise that ships, of which no more is known. */
function measuredAs(exerciseId: string, { timesS, frames }: Seen): SetMeasurement {
  const exercise = shipped.exercises.find(({ id }) => id === exerciseId);
  if (!exercise) throw new Error(`no exercise ${exerciseId}`);
  const ticks = timesS.map((timeS) => Math.round(timeS * 1000));
  return measureSet({
    recording: {
      disc: null,
      point: null,
      joints: { method: 'drawn', everyFrames: 1, frames: [...frames] },
      warnings: [],
    },
    table: { timeBase: { numerator: 1, denominator: 1000 }, ticks, endTicks: (ticks.at(-1) ?? 0) + 30 },
    shown: { width: 1000, height: 1200 },
    realTimeFactor: 1,
    exercise,
    view: null,
    setUp: v.parse(setUpSchema, {}),
    edges: [],
  });
}

// Usual heights of 10, 20 and 30 cm; each gesture is 0.6 to 1.4 times as high.
const doings: readonly (readonly [string, Omit<Doing, 'seed'>])[] = [
  ['stands', { gesturePx: 0, hands: 'apart', walks: false }],
  ['walks with small gestures of both hands', { gesturePx: 60, hands: 'together', walks: true }],
  ['walks and gestures with either hand', { gesturePx: 120, hands: 'apart', walks: true }],
  ['stands and gestures with both hands', { gesturePx: 180, hands: 'together', walks: false }],
];
const followed = {
  'back-squat': 'shoulders',
  'bodyweight-squat': 'hips',
  deadlift: 'hands',
  'overhead-press': 'hands',
  'push-up': 'shoulders',
  'pull-up': 'shoulders',
} as const;

describe.each(doings)('somebody who %s', (_, doing) => {
  it.each(Object.entries(followed))('has no rep of a %s, by the %s', (exercise, part) => {
    for (const [fps, seed] of [
      [10, 1],
      [10, 2],
      [10, 3],
      [30, 4],
      [30, 5],
    ] as const) {
      const timesS = evenTimes(12, fps);
      const { reps, follows } = measuredAs(exercise, { timesS, frames: talkingBodies(timesS, { ...doing, seed }) });
      expect({ fps, seed, follows, reps }).toEqual({ fps, seed, follows: part, reps: [] });
    }
  });
});

it('offers a gesture that goes as far as a press, and says why it is none', () => {
  const timesS = evenTimes(12, 10);
  const frames = talkingBodies(timesS, { gesturePx: 180, hands: 'together', walks: false, seed: 1 });
  const { offered } = measuredAs('overhead-press', { timesS, frames });
  expect(offered.length).toBeGreaterThan(0);
  for (const { doubts } of offered) expect(doubts).toContain('gesture');
});

describe('true reps of a body whose hands are followed', () => {
  /** A second of rest, then up and down again in 3 s three times, then rest; 0-1. */
  const up = (timeS: number): number => (1 - Math.cos((2 * Math.PI * Math.min(9, Math.max(0, timeS - 1))) / 3)) / 2;

  it.each([10, 30])('stay reps in a press from the shoulders, at %i frames a second', (fps) => {
    const timesS = evenTimes(11, fps);
    const frames = timesS.map((timeS) =>
      drawnBody({ wrist: [0, -330 - 300 * up(timeS)], elbow: [0, -100 - 200 * up(timeS)] }),
    );
    const { reps, follows } = measuredAs('overhead-press', { timesS, frames });
    expect([follows, reps.length]).toEqual(['hands', 3]);
  });

  it.each([10, 30])(
    'stay reps in a deadlift, where the shoulders rise with the hands, at %i frames a second',
    (fps) => {
      const timesS = evenTimes(11, fps);
      const frames = timesS.map((timeS) => {
        const low = 1 - up(timeS);
        // Trunk and thighs bend: shoulders sink by 0.27 of the height, hips by 0.1, the hands by 0.3.
        const head = [150 * low, 280 * low] as const;
        return drawnBody({
          ...{ nose: head, eye: head, ear: head, shoulder: [120 * low, 270 * low], elbow: [120 * low, 285 * low] },
          ...{ wrist: [100 * low, 300 * low], hip: [-60 * low, 100 * low], knee: [40 * low, 20 * low] },
        });
      });
      const { reps, follows } = measuredAs('deadlift', { timesS, frames });
      expect([follows, reps.length]).toEqual(['hands', 3]);
    },
  );
});
