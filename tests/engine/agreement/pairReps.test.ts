import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareReviewers } from '../../../engine/agreement/compareReviewers.ts';
import { compareReviews } from '../../../engine/agreement/compareReviews.ts';
import { pairReps } from '../../../engine/agreement/pairReps.ts';
import type { Rep } from '../../../engine/review/review.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { clip, entry, flag, reps, review } from '../reviews.ts';

const catalogue = catalogueOf(exercise());

/** Reps in seconds, numbered from 1 in the order given. */
const repsAt = (...spans: readonly (readonly [number, number])[]): Rep[] =>
  spans.map(([from, to], at) => ({ index: at + 1, start: { seconds: from }, end: { seconds: to } }));

const paired = (...rows: readonly Rep[][]) => pairReps(rows.map((row) => clip({ reps: row })));

describe('reps of one clip as two reviewers marked them', () => {
  it('go together by their time when one left the first unmarked', () => {
    const all = repsAt([0, 2.8], [3, 5.8], [6, 8.8]);
    const late = repsAt([3.2, 6], [6.1, 8.9]);
    expect(paired(all, late)).toEqual([
      [1, null],
      [2, 1],
      [3, 2],
    ]);
  });

  it('in frames and in seconds are laid beside each other by the time base of the clip', () => {
    const facts = {
      ...{ codec: 'h264', width: 640, height: 480, rotationDeg: 0 as const, frames: 300, durationUs: 10_000_000 },
      timeBase: { numerator: 1, denominator: 30 },
    };
    const inFrames = [90, 180].map((frame, at) => ({
      index: at + 1,
      start: { frame, ticks: frame },
      end: { frame: frame + 75, ticks: frame + 75 },
    }));
    expect(pairReps([clip({ facts, reps: inFrames }), clip({ reps: repsAt([0, 2.5], [3, 5.5], [6, 8.5]) })])).toEqual([
      [null, 1],
      [1, 2],
      [2, 3],
    ]);
  });

  it('without a time base go by their frames, and by number where frames stand beside seconds', () => {
    const frames = (first: number, index: number): Rep => ({
      index,
      start: { frame: first, ticks: first * 512 },
      end: { frame: first + 50, ticks: (first + 50) * 512 },
    });
    expect(paired([frames(0, 1), frames(60, 2)], [frames(62, 1)])).toEqual([
      [1, null],
      [2, 1],
    ]);
    expect(paired([frames(0, 1), frames(60, 2)], repsAt([2, 4]))).toEqual([
      [1, 1],
      [2, null],
    ]);
  });

  it('without an end last until the next one starts, the last as long as the others', () => {
    const starts = (...seconds: number[]): Rep[] => seconds.map((at, i) => ({ index: i + 1, start: { seconds: at } }));
    expect(paired(starts(0, 3, 6), starts(3.4, 6.4))).toEqual([
      [1, null],
      [2, 1],
      [3, 2],
    ]);
  });

  it('are the same only where they overlap by half of the shorter one', () => {
    expect(paired(repsAt([0, 2]), repsAt([1.2, 3.2]))).toHaveLength(2);
    expect(paired(repsAt([0, 2]), repsAt([0.8, 2.8]))).toHaveLength(1);
    // One marked two reps as one: it goes with the half that fills it better.
    expect(paired(repsAt([0, 5]), repsAt([0, 3], [3, 5]))).toEqual([
      [1, 1],
      [null, 2],
    ]);
  });

  it('find their partners whichever are left out and however far each edge is off', () => {
    const marks = fc.array(fc.tuple(fc.boolean(), fc.boolean(), fc.double({ min: -0.5, max: 0.5, noNaN: true })), {
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(
      fc.property(marks, (known) => {
        const at = known.map(([first, second, off], i) => ({ first, second, off, from: 3 * i + 1 }));
        const firstOnes = at.filter(({ first }) => first);
        const secondOnes = at.filter(({ second }) => second);
        const both = at.filter(({ first, second }) => first && second);
        const pairs = paired(
          repsAt(...firstOnes.map(({ from }) => [from, from + 2.5] as const)),
          repsAt(...secondOnes.map(({ from, off }) => [from + off, from + 2.5 + off] as const)),
        );
        expect(pairs.filter(([one, other]) => one !== null && other !== null)).toEqual(
          both.map((one) => [firstOnes.indexOf(one) + 1, secondOnes.indexOf(one) + 1]),
        );
        expect(pairs).toHaveLength(at.filter(({ first, second }) => first || second).length);
      }),
    );
  });

  it('of a third reviewer find those that only the second marked', () => {
    expect(paired(repsAt([3, 5]), repsAt([0, 2], [3, 5]), repsAt([0.1, 2.1], [3, 5]))).toEqual([
      [null, 1, 1],
      [1, 2, 2],
    ]);
  });
});

describe('two reviews that say the same of every rep, one with its first rep unmarked', () => {
  const said = (rep: number, seen: number) =>
    flag({ id: `f${rep}`, criterion: 'depth', severity: seen % 2 === 0 ? 'correct' : 'prefer', reps: [rep] });
  const first = review(
    entry({ clips: [clip({ reps: reps(5) })], flags: [1, 2, 3, 4, 5].map((rep) => said(rep, rep)) }),
  );
  const second = review(
    entry({
      clips: [
        clip({
          reps: reps(5)
            .slice(1)
            .map((rep) => ({ ...rep, index: rep.index - 1 })),
        }),
      ],
      flags: [1, 2, 3, 4].map((rep) => said(rep, rep + 1)),
    }),
  );

  it('agree on all four that both marked, and the fifth is told', () => {
    const { overall, differences, unpairedReps, onlyFirst, onlySecond } = compareReviews(first, second, catalogue);
    expect(overall).toMatchObject({ moments: 4, percent: 1 });
    expect(differences).toEqual([]);
    expect(unpairedReps).toEqual([{ entryId: 'e1', clip: 'a', numbers: [1, null] }]);
    expect([onlyFirst, onlySecond]).toEqual([1, 0]);
  });

  it('also when a third looks', () => {
    const { overall, notShared, unpairedReps } = compareReviewers([first, second, second], catalogue);
    expect(overall).toMatchObject({ moments: 4, unanimous: 1 });
    expect([notShared, unpairedReps.length]).toEqual([1, 1]);
  });

  it('name a moment by the number of each', () => {
    const milder = review(...second.entries.map((one) => ({ ...one, flags: one.flags.slice(1) })));
    const [difference] = compareReviews(first, milder, catalogue).differences;
    expect(difference).toMatchObject({
      rep: 2,
      secondRep: 1,
      first: { severity: 'correct' },
      second: { severity: 'keep' },
    });
  });
});
