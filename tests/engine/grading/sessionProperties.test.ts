import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import type { Entry, Review } from '../../../engine/review/review.ts';
import { catalogues, flagOn, isLookedAt, reviews, scoreOf, step, tickFor } from './arbitraries.ts';

const change = (review: Review, entryId: string, how: (entry: Entry) => Entry): Review => ({
  ...review,
  entries: review.entries.map((entry) => (entry.id === entryId ? how(entry) : entry)),
});
/** The entry without some flags; what they touched still counts as looked at. */
const withoutFlags = (entry: Entry, flagIds: readonly string[]): Entry => {
  const gone = entry.flags.filter((flag) => flagIds.includes(flag.id));
  return {
    ...entry,
    flags: entry.flags.filter((flag) => !gone.includes(flag)),
    ticks: [...entry.ticks, ...gone.map(tickFor)],
  };
};
const runs = { numRuns: 300 };

describe.each(catalogues)('counting %s', (name, catalogue) => {
  const grade = (review: Review) => gradeSession(review, catalogue);
  const most = name === 'cells' ? 69 : 79;

  it('removing a group gains the session exactly what was announced', () => {
    fc.assert(
      fc.property(reviews, (review) => {
        const before = grade(review);
        for (const raise of before.raises) {
          if (raise.kind === 'finding') continue;
          const after = grade({
            ...review,
            entries: review.entries.map((entry) => withoutFlags(entry, raise.flagIds)),
          });
          expect((scoreOf(after) ?? Number.NaN) - (scoreOf(before) ?? Number.NaN)).toBeCloseTo(raise.gain, 8);
        }
      }),
      runs,
    );
  });

  it('a further corrective flag where somebody looked never raises the session', () => {
    const drawn = reviews.chain((review) =>
      fc
        .constantFrom(...review.entries)
        .chain((entry) => fc.tuple(fc.constant(review), fc.constant(entry), flagOn(entry.clips, 'further'))),
    );
    fc.assert(
      fc.property(drawn, ([review, entry, flag]) => {
        fc.pre(isLookedAt(entry, flag));
        const [before, after] = [
          scoreOf(grade(review)),
          scoreOf(grade(change(review, entry.id, (one) => ({ ...one, flags: [...one.flags, flag] })))),
        ];
        expect(after === null).toBe(before === null);
        if (before !== null && after !== null) expect(after).toBeLessThanOrEqual(before + step);
      }),
      runs,
    );
  });

  it('the order of flags is irrelevant, down to the last bit', () => {
    fc.assert(
      fc.property(reviews, (review) => {
        const reversed = {
          ...review,
          entries: review.entries.map((one) => ({ ...one, flags: [...one.flags].reverse() })),
        };
        expect(grade(reversed)).toEqual(grade(review));
      }),
      runs,
    );
  });

  it('every score lies from 0 to 100, and a stop flag anywhere leaves no more than its cap', () => {
    fc.assert(
      fc.property(reviews, (review) => {
        const { state, technique, programme, range } = grade(review);
        const score = state.kind === 'none' ? null : state.score;
        const scores = [score, technique, programme, range?.low, range?.high].filter(
          (one) => one !== null && one !== undefined,
        );
        expect(scores.every((one) => one >= 0 && one <= 100)).toBe(true);
        const stop = review.entries.some((entry) => entry.flags.some((flag) => flag.severity === 'stop'));
        if (stop && score !== null) expect(Math.max(score, range?.high ?? 0)).toBeLessThanOrEqual(most);
      }),
      runs,
    );
  });

  it('its range has low not above high, and holds the score from above when every entry has a grade', () => {
    fc.assert(
      fc.property(reviews, (review) => {
        const { state, range, entries } = grade(review);
        if (state.kind === 'none' || range === null) return;
        expect(range.low).toBeLessThanOrEqual(range.high + step);
        if (entries.every((entry) => entry.state.kind !== 'none')) {
          expect(state.score).toBeLessThanOrEqual(range.high + step);
        }
      }),
      runs,
    );
  });

  it('is graded only when every entry is, and has no grade only when no entry has', () => {
    fc.assert(
      fc.property(reviews, (review) => {
        const { state, entries } = grade(review);
        const kinds = entries.map((entry) => entry.state.kind);
        expect(state.kind === 'graded').toBe(kinds.every((kind) => kind === 'graded'));
        expect(state.kind === 'none').toBe(kinds.every((kind) => kind === 'none'));
      }),
      runs,
    );
  });
});
