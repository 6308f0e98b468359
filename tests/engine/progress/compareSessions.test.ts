import { describe, expect, it } from 'vitest';
import { compareSessions } from '../../../engine/progress/faultChanges.ts';
import { trendOf } from '../../../engine/progress/trend.ts';
import type { Review } from '../../../engine/review/review.ts';
import { catalogue, draft, sessionOf } from '../letter/sample.ts';

type Flags = NonNullable<Parameters<typeof draft>[0]>['flags'];

const on = (date: string, flags: Flags, ticks?: readonly string[]): Review => {
  const review = sessionOf([draft({ flags, ...(ticks === undefined ? {} : { ticks }) })]);
  return { ...review, session: { ...review.session, date } };
};
const short = (reps: readonly number[], severity: 'adjust' | 'correct' = 'correct') => ({
  criterion: 'depth',
  fault: 'shortOfDepth',
  severity,
  reps: [...reps],
});
const kinds = (review: Review, ...earlier: Review[]): string[] =>
  compareSessions(review, earlier, catalogue).map(({ fault, kind }) => `${fault} ${kind}`);

describe('a fault since the session before', () => {
  it.each([
    ['gone', [short([1, 2])], []],
    ['better', [short([1, 2, 3, 4])], [short([1])]],
    ['better', [short([1], 'correct')], [short([1, 2], 'adjust')]],
    ['same', [short([1, 2])], [short([4, 5])]],
    ['worse', [short([1])], [short([1, 2])]],
    ['worse', [short([1, 2], 'adjust')], [short([1, 2], 'correct')]],
    ['new', [], [short([1])]],
  ])('is %s', (kind, before, now) => {
    expect(kinds(on('2026-03-08', now), on('2026-03-01', before))).toEqual([`shortOfDepth ${kind}`]);
  });

  it('is back when it was away last time and seen before that', () => {
    const three = [on('2026-02-22', [short([1])]), on('2026-03-01', [])];
    expect(kinds(on('2026-03-08', [short([1])]), ...three)).toEqual(['shortOfDepth back']);
  });

  it('is not called gone where nobody looked', () => {
    expect(kinds(on('2026-03-08', [], ['barPath']), on('2026-03-01', [short([1])]))).toEqual([]);
  });

  it('is not called gone after praise on one rep of five, and is after a look at all of them', () => {
    const praise = (reps: number[] | 'set') => ({ criterion: 'depth', severity: 'keep' as const, reps });
    const last = on('2026-03-01', [short([1, 2, 3])]);
    expect(kinds(on('2026-03-08', [praise([2])], []), last)).toEqual([]);
    expect(kinds(on('2026-03-08', [praise('set')], []), last)).toEqual(['shortOfDepth gone']);
  });

  it('is not called back where nobody looked in between: it is held against the last look', () => {
    const unseen = on('2026-03-01', [], ['barPath']);
    const glance = on('2026-03-01', [{ criterion: 'depth', severity: 'keep', reps: [1] }], []);
    for (const between of [unseen, glance]) {
      expect(kinds(on('2026-03-08', [short([1, 2])]), on('2026-02-22', [short([3, 4])]), between)).toEqual([
        'shortOfDepth same',
      ]);
    }
  });

  it('is counted on the reps that were looked at: 1 of 2 is more than 1 of 5', () => {
    const [change] = compareSessions(
      on('2026-03-08', [short([1]), { criterion: 'depth', severity: 'keep', reps: [2] }], []),
      [on('2026-03-01', [short([1])])],
      catalogue,
    );
    expect(change).toMatchObject({
      kind: 'worse',
      before: { reps: 1, of: 5, inAll: 5 },
      now: { reps: 1, of: 2, inAll: 5 },
    });
  });

  it('is compared with the latest session that has the exercise', () => {
    const other = sessionOf([draft({ exercise: 'romanian-deadlift' })]);
    expect(kinds(on('2026-03-08', []), on('2026-03-01', [short([1])]), other)).toEqual(['shortOfDepth gone']);
  });
});

describe('a trend', () => {
  it('is in the order of dates, with the score of each criterion by hand: 60 % off one rep of five is 88', () => {
    const points = trendOf([on('2026-03-08', []), on('2026-03-01', [short([1])])], catalogue);
    expect(points.map(({ date }) => date)).toEqual(['2026-03-01', '2026-03-08']);
    expect(points[0]?.criteria.find(({ criterion }) => criterion === 'depth')?.score).toBeCloseTo(88, 9);
    expect(points[1]?.criteria.find(({ criterion }) => criterion === 'depth')?.score).toBe(100);
  });
});
