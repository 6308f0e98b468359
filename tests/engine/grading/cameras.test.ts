import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unitNames, unitsLookedAt } from '../../../engine/review/lookedAt.ts';
import { setsDone } from '../../../engine/review/parts.ts';
import type { Entry } from '../../../engine/review/review.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { clip, entry, flag } from '../reviews.ts';
import { gradeEntry } from './gradeEntry.ts';

const third = shippedUnder(3);
const severities = ['keep', 'prefer', 'adjust', 'correct', 'stop'] as const;
const side = clip({ id: 'a', view: 'side' });
const front = clip({ id: 'b', name: 'Front', view: 'front', sameSet: { clip: 'a', offsetUs: 400_000 } });

const criteria = third.exercises.find(({ id }) => id === 'back-squat')?.criteria.map(({ id }) => id) ?? [];

/** Marks of one set, each seen by one of two cameras. */
const marks = fc.array(
  fc.record({
    criterion: fc.constantFrom(...criteria),
    severity: fc.constantFrom(...severities),
    reps: fc.oneof(fc.constant('set' as const), fc.uniqueArray(fc.integer({ min: 1, max: 5 }), { minLength: 1 })),
    tick: fc.boolean(),
    seenBy: fc.constantFrom('a', 'b'),
  }),
  { maxLength: 14 },
);

type Mark = typeof marks extends fc.Arbitrary<(infer M)[]> ? M : never;

const entryOf = (seen: readonly Mark[], clips: Entry['clips'], camera: (seenBy: string) => string): Entry =>
  entry({
    exercise: 'back-squat',
    clips,
    flags: seen.flatMap(({ tick, seenBy, ...mark }, i) =>
      tick ? [] : [flag({ id: `f${i}`, clip: camera(seenBy), ...mark })],
    ),
    ticks: seen.flatMap(({ tick, seenBy, criterion, reps }) =>
      tick ? [{ clip: camera(seenBy), criterion, reps }] : [],
    ),
  });

describe('one set filmed by two cameras', () => {
  it('is graded as if all had been seen by one that shows what either shows', () => {
    fc.assert(
      fc.property(marks, (seen) => {
        const both = gradeEntry(
          entryOf(seen, [side, front], (camera) => camera),
          third,
        );
        const one = gradeEntry(
          entryOf(seen, [{ ...side, view: null }], () => 'a'),
          third,
        );
        expect({ ...both.state, coverage: both.coverage > 0 }).toEqual({ ...one.state, coverage: one.coverage > 0 });
        expect(both.weightedMean).toBe(one.weightedMean);
        expect(both.setsDone).toBe(1);
      }),
    );
  });

  it('can be judged by what either camera shows, one cell a rep', () => {
    const { criteria: scored } = gradeEntry(entry({ exercise: 'back-squat', clips: [side, front] }), third);
    const alone = (from: typeof side) =>
      gradeEntry(entry({ exercise: 'back-squat', clips: [clip({ id: from.id, view: from.view })] }), third).criteria;
    const shown = (list: typeof scored) =>
      new Set(list.filter(({ applicable }) => applicable).map(({ criterion }) => criterion));
    expect(shown(scored)).toEqual(shown(alone(side)).union(shown(alone(front))));
    expect(shown(alone(front)).difference(shown(alone(side))).size).toBeGreaterThan(0);
    for (const { cells, applicable } of scored) expect(cells.applicable).toBe(applicable ? 5 : 0);
  });

  it('counts as one set with its own five reps', () => {
    const filmed = entry({
      exercise: 'back-squat',
      clips: [side, front, clip({ id: 'c' })],
      ticks: [{ clip: 'b', criterion: 'depth', reps: [2] }],
    });
    expect(setsDone(filmed)).toBe(2);
    expect(unitNames(filmed)).toHaveLength(10);
    expect([...unitsLookedAt(filmed, 'depth')]).toEqual(['a 2']);
  });
});
