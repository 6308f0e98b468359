import { describe, expect, it } from 'vitest';
import { compareReviewers } from '../../../engine/agreement/compareReviewers.ts';
import { cohenKappa } from '../../../engine/agreement/kappa.ts';
import type { Review } from '../../../engine/review/review.ts';
import type { Severity } from '../../../engine/rubric/rubric.ts';
import { fleissReviewers } from '../../published/fleiss1971.ts';
import { catalogueOf, exercise } from '../catalogue.ts';

const catalogue = catalogueOf(exercise());

/** A review of one set that says of each rep's depth what is given; null = not looked at. */
const reviewOf = (said: readonly (Severity | null)[]): Review => ({
  format: 'rackside-review',
  version: 4,
  voice: 'coach',
  trainee: { name: 'Alva', goal: 'growth', experience: 'experienced', units: 'kg', minor: false },
  session: { id: 's', title: '', date: '2026-03-01', notes: '', painNote: '' },
  entries: [
    {
      id: 'e',
      exercise: 'squat',
      clips: [
        {
          id: 'c',
          name: 'Set 1',
          view: 'side',
          realTimeFactor: 1,
          reps: said.map((_, index) => ({ index: index + 1, start: { seconds: index } })),
        },
      ],
      flags: said.flatMap((severity, index) =>
        severity === null
          ? []
          : [
              {
                ...{ id: `f${index}`, clip: 'c', criterion: 'depth', fault: null, severity, reps: [index + 1] },
                ...{ at: { seconds: index }, note: '', cue: '' },
              },
            ],
      ),
      ticks: [],
    },
  ],
});

describe('Six reviews of thirty reps', () => {
  const { overall, perSeverity, perCriterion, pairs, differences } = compareReviewers(
    fleissReviewers.map(reviewOf),
    catalogue,
  );

  it('have the kappa, its z and the kappa of each severity that are published (Fleiss 1971, Psychological Bulletin 76:378)', () => {
    expect(overall.moments).toBe(30);
    expect(overall.fleiss?.value).toBeCloseTo(0.430245, 6);
    expect(overall.fleiss?.z).toBeCloseTo(17.65, 2);
    expect(perSeverity.map(({ kappa }) => Number(kappa?.toFixed(3)))).toEqual([0.245, 0.245, 0.52, 0.471, 0.566]);
    expect(perCriterion).toMatchObject([{ criterion: 'depth', figures: overall }]);
  });

  it('agree in 55.6 % of pairs (Fleiss 1971), and all six on five reps (rows with a 6)', () => {
    expect(overall.pairsAgree).toBeCloseTo(0.5556, 4);
    expect(overall.unanimous).toBeCloseTo(5 / 30, 12);
    expect(differences).toHaveLength(25);
  });

  it('are also compared two by two, fifteen pairs whose shares have the published mean', () => {
    expect(pairs.map(({ first, second }) => `${first}${second}`).join(' ')).toBe(
      '01 02 03 04 05 12 13 14 15 23 24 25 34 35 45',
    );
    const shares = pairs.map(({ percent }) => percent ?? 0);
    expect(shares.reduce((sum, share) => sum + share, 0) / 15).toBeCloseTo(0.5556, 4);
  });
});

describe('Three reviews', () => {
  it('count only what all looked at, tell what was left out, and put the widest spread first', () => {
    const { overall, notShared, differences, perSeverity, pairs } = compareReviewers(
      [
        reviewOf(['keep', 'prefer', 'stop', 'adjust']),
        reviewOf(['keep', 'adjust', 'keep', 'adjust']),
        reviewOf(['keep', 'adjust', 'keep']),
      ],
      catalogue,
    );
    expect([overall.moments, notShared]).toEqual([3, 1]);
    expect(overall.unanimous).toBeCloseTo(1 / 3, 12);
    // Pairs that agree: 3 of 3, 1 of 3, 1 of 3.
    expect(overall.pairsAgree).toBeCloseTo(5 / 9, 12);
    expect(differences.map(({ rep, verdicts }) => [rep, ...verdicts.map(({ severity }) => severity)])).toEqual([
      [3, 'stop', 'keep', 'keep'],
      [2, 'prefer', 'adjust', 'adjust'],
    ]);
    expect(perSeverity).toMatchObject([
      { severity: 'keep', given: [1, 2, 2] },
      { severity: 'prefer', given: [1, 0, 0] },
      { severity: 'adjust', given: [0, 1, 1] },
      { severity: 'correct', given: [0, 0, 0], kappa: null },
      { severity: 'stop', given: [1, 0, 0] },
    ]);
    expect(pairs[0]).toMatchObject({ first: 0, second: 1, moments: 4, percent: 0.5 });
    // Rows and columns: keep, prefer, adjust, stop.
    const table = [
      [1, 0, 0, 0],
      [0, 0, 1, 0],
      [0, 0, 1, 0],
      [1, 0, 0, 0],
    ];
    expect(pairs[0]?.kappa?.value).toBeCloseTo(cohenKappa(table)?.value ?? 9, 12);
  });

  it('have no figures without a moment that two looked at', () => {
    const { overall, pairs } = compareReviewers([reviewOf([null]), reviewOf([null]), reviewOf(['keep'])], catalogue);
    expect(overall).toEqual({
      ...{ moments: 0, unanimous: null, pairsAgree: null, fleiss: null },
      ...{ ordinalAlpha: null, intervalAlpha: null, intraclass: { kind: 'tooFewToTell' } },
    });
    expect(pairs.map(({ kappa }) => kappa)).toEqual([null, null, null]);
  });
});
