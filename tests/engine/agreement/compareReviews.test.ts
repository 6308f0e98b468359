import { describe, expect, it } from 'vitest';
import { compareReviews } from '../../../engine/agreement/compareReviews.ts';
import type { Entry, Flag, Review } from '../../../engine/review/review.ts';
import { catalogueOf, exercise } from '../catalogue.ts';

const testCatalogue = catalogueOf(exercise());

const flag = (id: string, severity: Flag['severity'], reps: Flag['reps']): Flag => ({
  id,
  clip: 'c',
  criterion: 'depth',
  fault: null,
  severity,
  reps,
  at: { seconds: 1 },
  note: '',
  cue: '',
});

const reviewWith = (flags: Flag[], ticks: Entry['ticks'] = []): Review => ({
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
          reps: [1, 2, 3, 4].map((index) => ({ index, start: { seconds: index } })),
        },
      ],
      flags,
      ticks,
    },
  ],
});

describe('Two reviews of the same clips', () => {
  const first = reviewWith([flag('a', 'correct', [1]), flag('b', 'prefer', [2])]);
  const second = reviewWith([flag('c', 'correct', [1]), flag('d', 'correct', [2])]);

  it('pairs what both looked at, rep by rep, and names the moments that differ', () => {
    const { overall, differences } = compareReviews(first, second, testCatalogue);
    expect(overall.moments).toBe(4);
    expect(overall.percent).toBeCloseTo(3 / 4, 12);
    expect(differences.map(({ rep, criterion }) => [rep, criterion])).toEqual([[2, 'depth']]);
    expect(differences[0]?.first.severity).toBe('prefer');
    expect(differences[0]?.second.severity).toBe('correct');
  });

  it('gives the kappa of the counted table: po 3/4, pe (2·2 + 1·2)/16, kappa 3/5 by hand', () => {
    expect(compareReviews(first, second, testCatalogue).overall.kappa?.value).toBeCloseTo((0.75 - 0.375) / 0.625, 12);
  });

  it('compares each severity with all others, by hand', () => {
    const of = new Map(
      compareReviews(first, second, testCatalogue).perSeverity.map(({ severity, figures }) => [severity, figures]),
    );
    // Reps 1 to 4: correct, prefer, keep, keep against correct, correct, keep, keep.
    expect(of.get('correct')).toMatchObject({ moments: 4, first: 1, second: 2, both: 1, percent: 0.75 });
    // po 3/4, pe 1/4 × 1/2 + 3/4 × 1/2 = 1/2.
    expect(of.get('correct')?.kappa?.value).toBeCloseTo(0.5, 12);
    expect(of.get('prefer')).toMatchObject({ first: 1, second: 0, both: 0, percent: 0.75 });
    // pe 1/4 × 0 + 3/4 × 1 = 3/4.
    expect(of.get('prefer')?.kappa?.value).toBeCloseTo(0, 12);
    expect(of.get('keep')).toMatchObject({ first: 2, second: 2, both: 2, percent: 1 });
    expect(of.get('keep')?.kappa?.value).toBeCloseTo(1, 12);
    // Nobody said stop: agreement in full, and no kappa to speak of.
    expect(of.get('stop')).toMatchObject({ first: 0, second: 0, both: 0, percent: 1, kappa: null });
  });

  it('gives each criterion its own figures', () => {
    const ticked = (flags: Flag[]) => reviewWith(flags, [{ clip: 'c', criterion: 'pauses', reps: 'set' }]);
    const { perCriterion } = compareReviews(
      ticked(first.entries[0]?.flags ?? []),
      ticked(second.entries[0]?.flags ?? []),
      testCatalogue,
    );
    expect(perCriterion.map(({ criterion, figures }) => [criterion, figures.moments, figures.percent])).toEqual([
      ['depth', 4, 0.75],
      ['pauses', 4, 1],
    ]);
  });

  it('agrees wholly with itself', () => {
    const { overall, differences } = compareReviews(first, first, testCatalogue);
    expect(overall.percent).toBe(1);
    expect(overall.kappa?.value).toBeCloseTo(1, 12);
    expect(differences).toEqual([]);
  });

  it('leaves out what only one of the two looked at, and counts it', () => {
    const more = reviewWith(first.entries[0]?.flags ?? [], [{ clip: 'c', criterion: 'pauses', reps: 'set' }]);
    const { overall, onlyFirst, onlySecond } = compareReviews(more, second, testCatalogue);
    expect(overall.moments).toBe(4);
    expect([onlyFirst, onlySecond]).toEqual([4, 0]);
  });

  it('swapping the two changes no figure', () => {
    const there = compareReviews(first, second, testCatalogue).overall;
    const back = compareReviews(second, first, testCatalogue).overall;
    expect(back.kappa?.value).toBeCloseTo(there.kappa?.value ?? Number.NaN, 12);
    expect(back.ordinalAlpha).toBeCloseTo(there.ordinalAlpha ?? Number.NaN, 12);
  });
});
