import { describe, expect, it } from 'vitest';
import type { JudgedMoment } from '../../../engine/agreement/compareReviews.ts';
import type { Flag, Review } from '../../../engine/review/review.ts';
import { frameOfMoment } from '../../../renderer/agreement/Differences.tsx';

const flag = (id: string, criterion: Flag['criterion'], reps: Flag['reps'], frame: number): Flag => ({
  ...{ id, clip: 'a', criterion, fault: null, severity: 'adjust', reps, note: '', cue: '' },
  at: { frame, ticks: frame * 512 },
});

/** Two reps of 100 frames; depth flagged on both at once, in the first; the head in the second. */
const review = {
  entries: [
    {
      clips: [
        {
          id: 'a',
          reps: [
            { index: 1, start: { frame: 10, ticks: 5120 } },
            { index: 2, start: { frame: 110, ticks: 56320 } },
          ],
        },
      ],
      flags: [
        flag('late', 'depth', [1, 2], 70),
        flag('early', 'depth', 'set', 60),
        flag('head', 'headPosition', [2], 140),
      ],
    },
  ],
} as unknown as Review;

const moment = (criterion: Flag['criterion'], rep: number | null, clip = 'a'): JudgedMoment => ({
  ...{ entryId: 'e', exercise: 'back-squat', clip, rep, secondRep: rep, criterion },
  first: { severity: 'adjust', score: 80 },
  second: { severity: 'keep', score: 100 },
});

describe('the frame that a judged moment opens at', () => {
  it('is that of the first flag within the rep', () => {
    expect(frameOfMoment(review, moment('depth', 1))).toBe(60);
    expect(frameOfMoment(review, moment('headPosition', 2))).toBe(140);
  });

  it('is the start of the rep where its flag was set in another rep, or there is none', () => {
    expect(frameOfMoment(review, moment('depth', 2))).toBe(110);
    expect(frameOfMoment(review, moment('barPath', 1))).toBe(10);
  });

  it('is the first flag of a whole set, and else the clip’s start', () => {
    expect(frameOfMoment(review, moment('depth', null))).toBe(60);
    expect(frameOfMoment(review, moment('barPath', null))).toBe(0);
    expect(frameOfMoment(review, moment('depth', 1, 'elsewhere'))).toBe(0);
  });
});
