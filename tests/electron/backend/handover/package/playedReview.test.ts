import { describe, expect, it } from 'vitest';
import { judgingDataOf } from '../../../../../electron/backend/catalogue/loadCatalogue.ts';
import { ownTime, reviewAsPlayed } from '../../../../../electron/backend/handover/package/playedReview.ts';
import { parseReview } from '../../../../../engine/review/parseReview.ts';
import { appFolder } from '../../workbench.ts';

/** A card of 2 s, 1 s of footage, 1.5 s of standing still, the second second at half speed, the third as filmed. */
const laid = {
  lastsUs: 7_500_000,
  stretches: [
    { kind: 'card', lastsUs: 2_000_000 },
    { kind: 'play', lastsUs: 1_000_000, fromUs: 0, speed: 1 },
    { kind: 'freeze', lastsUs: 1_500_000, frame: 10 },
    { kind: 'play', lastsUs: 2_000_000, fromUs: 1_000_000, speed: 0.5 },
    { kind: 'play', lastsUs: 1_000_000, fromUs: 2_000_000, speed: 1 },
  ],
} as const;

describe('the own time of a clip', () => {
  it.each([
    [0, 2_000_000],
    [500_000, 2_500_000],
    [1_000_000, 4_500_000],
    [1_500_000, 5_500_000],
    [2_000_000, 6_500_000],
    [2_900_000, 7_400_000],
    [3_000_000, 7_500_000],
    [9_000_000, 7_500_000],
  ])('%d µs of the footage are at %d µs', (footageUs, ownUs) => {
    expect(ownTime(laid)(footageUs)).toBeCloseTo(ownUs, 3);
  });

  it('is what flags and reps of a played review are told in', () => {
    const written = {
      format: 'rackside-review',
      version: 3,
      trainee: { name: 'Mira Holt' },
      session: { date: '2026-03-04' },
      entries: [
        {
          id: 'e',
          exercise: 'back-squat',
          clips: [{ id: 'c', name: 'Set 1', reps: [{ index: 1, start: { seconds: 0.5 }, end: { seconds: 1.5 } }] }],
          flags: [
            { id: 'f', clip: 'c', criterion: 'depth', severity: 'adjust', reps: [1], at: { seconds: 1 } },
            { id: 'g', clip: 'c', criterion: 'depth', severity: 'adjust', reps: [1], at: { frame: 20, ticks: 20 } },
          ],
        },
      ],
    };
    const parsed = parseReview(JSON.parse(JSON.stringify(written)), judgingDataOf(appFolder).catalogue(1));
    if (!parsed.ok) throw new Error(parsed.sentence);
    const facts = { codec: 'h264', width: 2, height: 2, rotationDeg: 0, frames: 75, durationUs: 7_500_000 } as const;
    const timeBase = { numerator: 1, denominator: 10 };
    const footage = { timeBase, ticks: Array.from({ length: 30 }, (_, tick) => tick), endTicks: 30 };
    const clip = {
      facts: { ...facts, timeBase },
      footage,
      timeOf: ownTime(laid),
      remarks: new Map([['f', 3_000_000]]),
    };
    const [entry] = reviewAsPlayed(parsed.review, new Map([['c', clip]])).entries;
    expect(entry?.clips[0]?.reps).toEqual([{ index: 1, start: { seconds: 2.5 }, end: { seconds: 5.5 } }]);
    expect(entry?.flags.map(({ at }) => at)).toEqual([{ seconds: 3 }, { seconds: 6.5 }]);
  });
});
