import { describe, expect, it } from 'vitest';
import { judgingDataOf } from '../../../../../electron/backend/catalogue/loadCatalogue.ts';
import { annotatedTime } from '../../../../../electron/backend/handover/package/annotatedTime.ts';
import { reviewAsPlayed } from '../../../../../electron/backend/handover/package/playedReview.ts';
import type { Shot } from '../../../../../electron/backend/handover/render/clips/timeline.ts';
import type { PictureNote } from '../../../../../electron/backend/handover/render/picture.ts';
import { parseReview } from '../../../../../engine/review/parseReview.ts';
import { appFolder } from '../../workbench.ts';
import { noteAt } from '../shownClip.ts';

const timeBase = { numerator: 1, denominator: 10 };
const tableOf = (frames: number) => ({
  timeBase,
  ticks: Array.from({ length: frames }, (_, tick) => tick),
  endTicks: frames,
});
const footage = tableOf(30);
const range = { firstFrame: 0, lastFrame: 29 };
const said = noteAt(10);

const pictures = (frames: readonly number[], notes: readonly PictureNote[] = []): Shot[] =>
  frames.map((frame) => ({ kind: 'picture', frame, notes }));
const from = (first: number, count: number, each = 1) =>
  Array.from({ length: count }, (_, place) => first + Math.floor(place / each));

/** Ten pictures a second: a card of 2 s, 1 s of footage, 1.5 s of standing still, the second second at half speed, the third as filmed. */
const shots: readonly Shot[] = [
  ...Array.from({ length: 20 }, (): Shot => ({ kind: 'card' })),
  ...pictures(from(0, 10)),
  ...pictures(from(10, 15, 15), [said]),
  ...pictures(from(10, 20, 2)),
  ...pictures(from(20, 10)),
];
const times = annotatedTime(shots, { table: tableOf(75), footage, range, notes: new Map([['f', said]]) });

describe('the times of a clip with a card, a pause and slow motion', () => {
  it.each([
    [0, 2_000_000],
    [500_000, 2_500_000],
    [1_000_000, 3_000_000],
    [1_500_000, 5_500_000],
    [2_000_000, 6_500_000],
    [2_900_000, 7_400_000],
    [9_000_000, 7_400_000],
  ])('%d µs of the footage are first seen at %d µs', (footageUs, ownUs) => {
    expect(times.timeOf(footageUs)).toBe(ownUs);
  });

  it('have a clock that tells the footage’s time, 0 on the card', () => {
    const at = (ownS: number) => times.clockUs?.[ownS * 10];
    expect([0, 1.9, 2, 2.7, 3, 4.4, 4.5, 5.5, 7.4].map(at)).toEqual([
      0, 0, 0, 700_000, 1_000_000, 1_000_000, 1_000_000, 1_500_000, 2_900_000,
    ]);
  });

  it('is what flags and reps of a played review are told in', () => {
    const written = {
      format: 'rackside-review',
      version: 4,
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
    const clip = { facts: { ...facts, timeBase }, footage, range, ...times };
    const [entry] = reviewAsPlayed(parsed.review, new Map([['c', clip]])).entries;
    expect(entry?.clips[0]?.reps).toEqual([{ index: 1, start: { seconds: 2.5 }, end: { seconds: 5.5 } }]);
    expect(entry?.flags.map(({ at }) => at)).toEqual([{ seconds: 3 }, { seconds: 6.5 }]);
  });
});
