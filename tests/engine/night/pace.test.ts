import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longPauseMs, minutesLeft, paceOf, type WorkAct, workedMs } from '../../../engine/night/pace.ts';

const minute = 60_000;
const dayStartMs = Date.UTC(2026, 2, 4);
const times = fc.array(fc.integer({ min: 0, max: 24 * 60 * minute }), { maxLength: 60 });

/** A clip judged every `each` minutes from an hour of a day on. */
const clipsAt = (day: number, hour: number, each: number, count: number): WorkAct[] =>
  Array.from({ length: count }, (_, at) => ({
    atMs: dayStartMs + (day * 24 * 60 + hour * 60 + at * each) * minute,
    clipId: `${day}-${hour}-${at}`,
  }));

describe('time at work', () => {
  it('is the time between acts, without long pauses', () => {
    // 0, 2 and 5 minutes; then half an hour away; then 35 and 36.
    expect(workedMs([0, 2, 5, 35, 36].map((at) => at * minute))).toBe(6 * minute);
  });

  it('is never more than from the first act to the last, and takes no order', () => {
    fc.assert(
      fc.property(times, (list) => {
        const worked = workedMs(list);
        expect(worked).toBeGreaterThanOrEqual(0);
        expect(worked).toBeLessThanOrEqual(list.length === 0 ? 0 : Math.max(...list) - Math.min(...list));
        expect(workedMs([...list].reverse())).toBe(worked);
      }),
    );
  });

  it('is the same whenever the work was done', () => {
    fc.assert(
      fc.property(times, fc.integer({ min: -1e9, max: 1e9 }), (list, shift) => {
        expect(workedMs(list.map((at) => at + shift))).toBe(workedMs(list));
      }),
    );
  });

  it('of two stretches with a long pause between them is that of both', () => {
    fc.assert(
      fc.property(times, times, (before, after) => {
        const restAt = 24 * 60 * minute + longPauseMs + 1;
        const both = [...before, ...after.map((at) => at + restAt)];
        expect(workedMs(both)).toBe(workedMs(before) + workedMs(after));
      }),
    );
  });
});

describe('the pace', () => {
  it('is today’s, once three clips were judged today', () => {
    // Five clips four minutes apart are sixteen minutes of work.
    const acts = [...clipsAt(-1, 20, 1, 30), ...clipsAt(0, 20, 4, 5)];
    expect(paceOf(acts, dayStartMs)).toEqual({ minutesPerClip: 16 / 5, by: 'today' });
  });

  it('is that of the last days while today tells too little', () => {
    const acts = [...clipsAt(-2, 20, 3, 4), ...clipsAt(0, 20, 4, 2)];
    expect(paceOf(acts, dayStartMs)).toEqual({ minutesPerClip: 9 / 4, by: 'lastDays' });
  });

  it('is not told from weeks ago, nor from nothing', () => {
    expect(paceOf(clipsAt(-30, 20, 3, 9), dayStartMs)).toBeNull();
    expect(paceOf([], dayStartMs)).toBeNull();
  });

  it('counts work on letters to the clips', () => {
    const letter = { atMs: dayStartMs + (20 * 60 + 9) * minute, clipId: null };
    // Clips at 0, 2 and 4 minutes, the letter at 9.
    expect(paceOf([...clipsAt(0, 20, 2, 3), letter], dayStartMs)).toEqual({ minutesPerClip: 3, by: 'today' });
  });
});

describe('the minutes left', () => {
  const pace = fc.double({ min: 0.05, max: 30, noNaN: true });
  const clips = fc.nat({ max: 300 });

  it('are said as a person would: in fives, tens and half hours', () => {
    expect(minutesLeft({ minutesPerClip: 3.4 }, 12)).toBe(40);
    expect(minutesLeft({ minutesPerClip: 3 }, 4)).toBe(10);
    expect(minutesLeft({ minutesPerClip: 0.5 }, 1)).toBe(5);
    expect(minutesLeft({ minutesPerClip: 4 }, 40)).toBe(150);
    expect(minutesLeft({ minutesPerClip: 4 }, 0)).toBe(0);
  });

  it('never grow less with more clips or slower work, and are near the plain product', () => {
    fc.assert(
      fc.property(pace, pace, clips, clips, (one, other, few, many) => {
        const [quick, slow] = [Math.min(one, other), Math.max(one, other)];
        const [less, more] = [Math.min(few, many), Math.max(few, many)];
        expect(minutesLeft({ minutesPerClip: slow }, more)).toBeGreaterThanOrEqual(
          minutesLeft({ minutesPerClip: quick }, less),
        );
        const said = minutesLeft({ minutesPerClip: one }, few);
        expect(said % 5).toBe(0);
        expect(Math.abs(said - one * few)).toBeLessThanOrEqual(Math.max(5, 0.17 * one * few));
      }),
    );
  });
});
