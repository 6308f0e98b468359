import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { repTotals } from '../../../engine/grading/repTotals.ts';
import type { Entry, Tick } from '../../../engine/review/review.ts';
import { catalogueOf, exercise, shippedRubric } from '../catalogue.ts';
import { allSix, clip, entry, flag, reps, review } from '../reviews.ts';
import { catalogues, reviews } from './arbitraries.ts';
import { gradeEntry } from './gradeEntry.ts';

const catalogue = { ...catalogueOf(exercise()), rubric: shippedRubric(3) };
const graded = (judged: Entry) => gradeEntry(judged, catalogue);
const onClip = (id: string, criteria: readonly string[] = allSix, which: Tick['reps'] = 'set'): Tick[] =>
  criteria.map((criterion) => ({ clip: id, criterion, reps: which }));
const criterionOf = (judged: Entry, id: string) => graded(judged).criteria.find((one) => one.criterion === id);

describe('a clip that nobody opened', () => {
  const half = entry({ clips: [clip(), clip({ id: 'b', name: 'Set 2' })], ticks: onClip('a') });

  it('counts for nothing: 100 by the set that was seen, half looked at, so provisional', () => {
    const grade = graded(half);
    expect(grade.state).toMatchObject({ kind: 'provisional', score: 100 });
    expect(grade.coverage).toBe(0.5);
  });

  it('ranges from all of it at 50: 100 − 0.5 × 25 − 0.325 × 24 − 0.25 × 15 = 75.95, to all of it at 100', () => {
    expect(graded(half).range).toEqual({ low: expect.closeTo(75.95, 8), high: 100 });
  });

  it('does not soften what the other one showed: 40 stays 40', () => {
    const short = { ...half, flags: [flag({ criterion: 'depth', severity: 'correct' })] };
    expect(criterionOf(short, 'depth')?.score).toBe(40);
  });

  it('leaves the weight of its exercise in the session, which is of the sets done', () => {
    const short = entry({ flags: [flag({ criterion: 'depth', severity: 'correct' })], ticks: onClip('a') });
    const twoSets = { ...half, id: 'e2', clips: [clip({ id: 'c' }), clip({ id: 'd' })], ticks: onClip('c') };
    // 0.5 × 60 × 0.25 + 0.325 × 59 = 26.675 off the first
    expect(gradeSession(review(short, twoSets), catalogue).technique).toBeCloseTo((73.325 + 2 * 100) / 3, 8);
  });
});

describe('a rep of a criterion', () => {
  it('counts once it has a flag or a tick, and only then', () => {
    const judged = entry({
      flags: [flag({ criterion: 'depth', severity: 'correct', reps: [2] })],
      ticks: onClip('a', ['depth'], [1, 4]),
    });
    const depth = criterionOf(judged, 'depth');
    expect(depth?.reps.map(({ rep, score }) => [rep, score])).toEqual([
      [1, 100],
      [2, 40],
      [4, 100],
    ]);
    expect(depth?.score).toBe(80);
    expect(depth?.cells).toEqual({ lookedAt: 3, applicable: 5 });
    // Depth is a quarter: 0.25 × 3 of 1 × 5.
    expect(graded(judged).coverage).toBeCloseTo(0.15, 8);
  });

  it('is looked at by praise, and all of a set by what is said of the whole set', () => {
    const praised = entry({ flags: [flag({ criterion: 'depth', severity: 'keep', reps: [3] })] });
    expect(criterionOf(praised, 'depth')?.cells.lookedAt).toBe(1);
    const whole = entry({ flags: [flag({ criterion: 'depth', severity: 'prefer' })] });
    expect(criterionOf(whole, 'depth')?.cells.lookedAt).toBe(5);
  });

  it('is applicable where the view of its own clip can judge it: two sets, one of them from the front', () => {
    const views = entry({ clips: [clip(), clip({ id: 'b', view: 'front' })], ticks: onClip('a') });
    const applicable = Object.fromEntries(graded(views).criteria.map((one) => [one.criterion, one.cells.applicable]));
    expect(applicable).toEqual({ ...Object.fromEntries(allSix.map((id) => [id, 5])), eccentricTempo: 10, pauses: 10 });
    // Ten reps more of tempo 0.2 and pauses 0.1: 5 of 5 + 5 × 0.3.
    expect(graded(views).coverage).toBeCloseTo(5 / 6.5, 8);
  });

  it('that somebody judged all the same is applicable by that', () => {
    const front = entry({ clips: [clip({ view: 'front' })], ticks: onClip('a', ['depth'], [1]) });
    expect(criterionOf(front, 'depth')?.cells).toEqual({ lookedAt: 1, applicable: 1 });
    expect(graded(front).coverage).toBeCloseTo(0.25 / (0.25 + 5 * 0.3), 8);
  });

  it('totals over what was looked at in it, and has none where nothing was', () => {
    const judged = entry({
      clips: [clip({ reps: reps(3) })],
      flags: [flag({ criterion: 'depth', severity: 'correct', reps: [2] })],
      ticks: [...onClip('a', ['depth'], [1]), ...onClip('a', ['barPath'], [2])],
    });
    // Rep 2: depth 40 at 0.25 and path 100 at 0.20.
    expect(repTotals(judged, graded(judged))).toEqual([
      { clip: 'a', rep: 1, total: 100 },
      { clip: 'a', rep: 2, total: expect.closeTo(30 / 0.45, 8) },
    ]);
  });
});

describe('the programme in a session of version 3', () => {
  const clean = entry({ ticks: onClip('a') });
  const cost = { keep: 0, prefer: 1, adjust: 2.5, correct: 6, stop: 10 } as const;

  it('costs nothing and gives nothing where nothing is found', () => {
    expect(gradeSession(review(clean), catalogue)).toMatchObject({ programme: null, programmeCost: null });
    const sound = gradeSession(review({ ...clean, plan: { sets: [{ reps: 10 }, { reps: 10 }] } }), catalogue);
    expect(sound.findings).toEqual([]);
    expect(sound).toMatchObject({ programmeCost: 0, technique: 100, state: { score: 100 } });
  });

  it('takes off technique what its findings cost, 10 points at most; without one the session gains the difference', () => {
    const [, [, cells]] = catalogues;
    fc.assert(
      fc.property(reviews, (drawn) => {
        const grade = gradeSession(drawn, cells);
        if (grade.technique === null || grade.state.kind === 'none' || grade.programmeCost === null) return;
        const costs = grade.findings.map(({ severity }) => cost[severity]);
        const score = (off: number) => {
          const free = Math.max(0, (grade.technique ?? 0) - Math.min(10, off));
          return drawn.entries.some(({ flags }) => flags.some(({ severity }) => severity === 'stop'))
            ? Math.min(69, free)
            : free;
        };
        const sum = costs.reduce<number>((total, one) => total + one, 0);
        expect(grade.state.score).toBeCloseTo(score(sum), 8);
        for (const [index, { id }] of grade.findings.entries()) {
          const raise = grade.raises.find((one) => one.kind === 'finding' && one.findingId === id);
          expect(raise?.gain).toBeCloseTo(score(sum - (costs[index] ?? 0)) - score(sum), 8);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('is ranked with the remarks: adjust costs 2.5, more than a head that tips', () => {
    const judged = {
      ...clean,
      flags: [flag({ criterion: 'headPosition', severity: 'prefer' as const })],
      plan: { sets: [{ reps: 60 }, { reps: 60 }] },
    };
    const { raises, findings } = gradeSession(review(judged), catalogue);
    const heaviest = findings.filter(({ severity }) => severity === 'adjust' || severity === 'correct');
    expect(heaviest.length).toBeGreaterThan(0);
    // The head: 0.5 × 8 × 0.1 + 0.325 × 7 = 2.675; findings of 2.5 come after it, those of 6 before.
    const gains = raises.map(({ gain }) => gain);
    expect(gains).toEqual(gains.toSorted((a, b) => b - a));
    expect(raises.find(({ kind }) => kind === 'group')?.gain).toBeCloseTo(2.675, 8);
    expect(raises.filter(({ kind }) => kind === 'finding')).toHaveLength(findings.length);
  });
});

describe('stops in version 3', () => {
  const stop = (id: string, change: Partial<Entry> = {}): Entry =>
    entry({
      id,
      clips: [clip({ id: `${id}-clip` })],
      flags: [flag({ id: `${id}-stop`, clip: `${id}-clip`, criterion: 'spinePosition', severity: 'stop', reps: [1] })],
      ticks: onClip(`${id}-clip`),
      ...change,
    });
  const clean = (id: string): Entry => stop(id, { flags: [], setsDone: 9 });

  it('hold the session where they hold the lift: one lift at D+, nine clean sets, D+', () => {
    const grade = gradeSession(review(stop('e1'), clean('e2')), catalogue);
    expect(grade.technique).toBeCloseTo((69 + 900) / 10, 8);
    expect(grade.state).toMatchObject({ score: 69, mark: 'D+' });
    expect(grade.raises).toMatchObject([{ kind: 'group', severity: 'stop', gain: 31 }]);
  });

  it('in two lifts are one raise, as either alone gains nothing', () => {
    const grade = gradeSession(review(stop('e1'), stop('e2')), catalogue);
    expect(grade.entries.map(({ raises }) => raises[0]?.gain)).toEqual([31, 31]);
    expect(grade.raises).toMatchObject([
      { kind: 'stops', groups: 2, entryIds: ['e1', 'e2'], flagIds: ['e1-stop', 'e2-stop'], gain: 31 },
    ]);
  });
});
