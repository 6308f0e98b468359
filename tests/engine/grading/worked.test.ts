import { describe, expect, it } from 'vitest';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { repTotals } from '../../../engine/grading/repTotals.ts';
import { equalSets } from '../../../engine/review/plan.ts';
import type { Entry } from '../../../engine/review/review.ts';
import { sayMissingGrade } from '../../../engine/wording/sayGrade.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { allSix, clip, entry, flag, reps, review, ticks } from '../reviews.ts';
import { gradeEntry } from './gradeEntry.ts';

const catalogue = catalogueOf(exercise());

/**
 * By hand. Clip a has two reps, clip b none, so the entry has three units. Depth: a1 = 0.80 × 0.92 = 73.6,
 * a2 = 92, b = 40, mean 205.6 / 3 = 68.5333. Eccentric tempo and bar path 100. Shares .25, .20, .20 of .65.
 */
const worked: Entry = entry({
  clips: [clip({ reps: reps(2) }), clip({ id: 'b', reps: [] })],
  flags: [
    flag({ id: 'slack', criterion: 'depth', severity: 'adjust', fault: 'shortOfDepth', reps: [1] }),
    flag({ id: 'taste', criterion: 'depth', severity: 'prefer', fault: 'shortOfDepth' }),
    flag({ id: 'short', clip: 'b', criterion: 'depth', severity: 'correct', fault: 'shortOfDepth' }),
    flag({ id: 'well', criterion: 'barPath', severity: 'keep' }),
  ],
  ticks: ticks('eccentricTempo'),
});

describe('an entry of two clips', () => {
  const grade = gradeEntry(worked, catalogue);

  it('scores each rep by the product of what its flags leave', () => {
    const depth = grade.criteria.find((one) => one.criterion === 'depth');
    expect(depth?.reps.map(({ clip: of, rep, score }) => [of, rep, score])).toEqual([
      ['a', 1, 73.6],
      ['a', 2, 92],
      ['b', null, 40],
    ]);
    expect(depth?.score).toBeCloseTo(205.6 / 3, 8);
    expect(depth?.reps[0]?.flags.map((cost) => [cost.flagId, cost.cost])).toEqual([
      ['slack', 0.2],
      ['taste', 0.08],
    ]);
  });

  it('is three quarters weighted mean and one quarter lowest: 83.0564, a B', () => {
    expect(grade.coverage).toBe(0.65);
    expect(grade.weightedMean).toBeCloseTo((0.25 * (205.6 / 3) + 40) / 0.65, 8);
    expect(grade.lowest?.criterion).toBe('depth');
    expect(grade.state).toMatchObject({ kind: 'graded', mark: 'B', gradePoints: 3 });
    expect(grade.state.kind !== 'none' && grade.state.score).toBeCloseTo(83.056410256, 8);
  });

  it('ranges from 68.475 to 86.2333, with pauses, head and spine at 50 and at 100', () => {
    expect(grade.range?.low).toBeCloseTo(68.475, 8);
    expect(grade.range?.high).toBeCloseTo(86.233333333, 8);
  });

  it('says what would raise it: the short set first', () => {
    expect(grade.raises.map(({ flagIds, reps: touched, severity }) => [flagIds, touched, severity])).toEqual([
      [['short'], 1, 'correct'],
      [['slack'], 1, 'adjust'],
      [['taste'], 2, 'prefer'],
    ]);
    const gains = [10.769230769, 3.302564103, 2.584615385];
    expect(grade.raises.map((raise) => raise.gain)).toEqual(gains.map((gain) => expect.closeTo(gain, 8)));
  });

  it('totals each rep over the criteria looked at: (.25 × 73.6 + 40) / .65 for the first', () => {
    expect(repTotals(worked, grade)).toEqual([
      { clip: 'a', rep: 1, total: expect.closeTo(58.4 / 0.65, 8) },
      { clip: 'a', rep: 2, total: expect.closeTo(63 / 0.65, 8) },
      { clip: 'b', rep: null, total: expect.closeTo(50 / 0.65, 8) },
    ]);
  });
});

it('lets a flag that lists reps touch the set where none is marked', () => {
  const unmarked = entry({
    clips: [clip({ reps: [] })],
    flags: [flag({ criterion: 'depth', severity: 'adjust', reps: [4] })],
    ticks: ticks(...allSix),
  });
  expect(gradeEntry(unmarked, catalogue).criteria[0]?.score).toBe(80);
});

it('totals reps also while the first criterion is not looked at', () => {
  const half = entry({ clips: [clip({ reps: reps(2) })], ticks: ticks('spinePosition', 'barPath') });
  expect(repTotals(half, gradeEntry(half, catalogue)).map((one) => one.total)).toEqual([100, 100]);
  expect(repTotals(entry(), gradeEntry(entry(), catalogue))).toEqual([]);
});

describe('coverage', () => {
  const graded = (...looked: readonly string[]) => gradeEntry(entry({ ticks: ticks(...looked) }), catalogue);

  it.each([
    [['depth', 'eccentricTempo', 'spinePosition'], 'graded', 0.6],
    [['depth', 'eccentricTempo', 'headPosition'], 'provisional', 0.55],
    [['eccentricTempo', 'pauses'], 'provisional', 0.3],
    [['depth'], 'none', 0.25],
    [[], 'none', 0],
  ])('%j looked at: %s', (looked, kind, coverage) => {
    const grade = graded(...looked);
    expect([grade.state.kind, grade.coverage]).toEqual([kind, coverage]);
    expect(grade.range === null).toBe(kind === 'none');
  });

  it('counts only what the view can judge: from the front, tempo and pauses are everything', () => {
    const front = entry({ clips: [clip({ view: 'front' })], ticks: ticks('eccentricTempo') });
    const grade = gradeEntry(front, catalogue);
    expect(grade.coverage).toBeCloseTo(2 / 3, 8);
    expect(grade.criteria.filter((one) => one.applicable).map((one) => one.criterion)).toEqual([
      'eccentricTempo',
      'pauses',
    ]);
  });

  it('takes a criterion that somebody judged all the same as applicable', () => {
    const front = entry({ clips: [clip({ view: 'front' })], ticks: ticks('eccentricTempo', 'depth') });
    expect(gradeEntry(front, catalogue).coverage).toBeCloseTo(0.45 / 0.55, 8);
  });

  it('takes everything as applicable where the view is not known', () => {
    const unknown = entry({ clips: [clip({ view: null })], ticks: ticks('eccentricTempo') });
    expect(gradeEntry(unknown, catalogue).coverage).toBeCloseTo(0.2, 8);
  });
});

describe('no grade', () => {
  it.each([
    ['no clip', entry({ clips: [] }), 'no clip'],
    [
      'a view that shows nothing',
      entry({ clips: [clip({ view: 'oblique' })] }),
      'nothing that this exercise is judged by is visible',
    ],
    ['nothing looked at', entry(), 'Nothing has been looked at'],
    ['too little looked at', entry({ ticks: ticks('depth') }), 'Only 25%'],
    ['an exercise that is gone', entry({ exercise: 'gone' }), 'not in the library'],
  ])('%s: says why', (_name, judged, why) => {
    const { state, raises } = gradeEntry(judged, catalogue);
    expect(state.kind === 'none' ? sayMissingGrade(state.reason, 'en') : '').toContain(why);
    expect(raises).toEqual([]);
  });
});

describe('a stop flag', () => {
  const stopped = entry({
    flags: [flag({ criterion: 'spinePosition', severity: 'stop', fault: 'unsafeSetUp', reps: [1] })],
    ticks: ticks(...allSix),
  });

  it('holds the entry at 69: without it 0.75 × 97 + 0.25 × 80 = 92.75, clean 100', () => {
    const grade = gradeEntry(stopped, catalogue);
    expect(grade).toMatchObject({ cappedByStop: true, state: { score: 69, mark: 'D+' } });
    expect(grade.raises).toMatchObject([{ severity: 'stop', gain: 31 }]);
  });

  it('holds the session at 79, and what lifts the cap is announced', () => {
    const clean = entry({ id: 'e2', clips: [clip({ id: 'c' })], ticks: [], setsDone: 5 });
    const judged = { ...clean, ticks: allSix.map((criterion) => ({ clip: 'c', criterion, reps: 'set' as const })) };
    const grade = gradeSession(review(stopped, judged), catalogue);
    expect(grade.technique).toBeCloseTo((69 + 5 * 100) / 6, 8);
    expect(grade).toMatchObject({ cappedByStop: true, state: { score: 79 } });
    expect(grade.raises).toMatchObject([{ entryId: 'e1', gain: 21 }]);
  });

  it('does not hold down what is lower anyway', () => {
    const worse = { ...stopped, flags: [flag({ criterion: 'depth', severity: 'stop' })] };
    expect(gradeEntry(worse, catalogue)).toMatchObject({
      cappedByStop: false,
      state: { score: 56.25, mark: 'F' },
    });
  });
});

describe('a session', () => {
  const clean = (id: string, change: Partial<Entry> = {}) =>
    entry({
      id,
      clips: [clip({ id: `${id}-clip` })],
      ticks: allSix.map((criterion) => ({ clip: `${id}-clip`, criterion, reps: 'set' as const })),
      ...change,
    });

  it('weights entries by sets done: two clips, and four sets stated', () => {
    const grade = gradeSession(review(worked, clean('e2', { setsDone: 4 })), catalogue);
    expect(grade.technique).toBeCloseTo(94.352136752, 8);
    expect(grade.programme).toBeNull();
    expect(grade.state).toMatchObject({ kind: 'graded', mark: 'A' });
    expect(grade.raises[0]).toMatchObject({ entryId: 'e1', flagIds: ['short'], gain: expect.closeTo(3.58974359, 7) });
  });

  it('mixes in the programme once a plan is known: one thing to adjust costs 0.2 of its fifth', () => {
    const planned = clean('e1', { plan: equalSets({ sets: 3, reps: 40 }) });
    const grade = gradeSession(review(planned), catalogue);
    expect(grade).toMatchObject({ technique: 100, programme: 80, state: { score: 96, mark: 'A' } });
    expect(grade.findings.map((finding) => finding.kind)).toEqual(['rep-range']);
  });

  it('keeps the programme out without a plan, and counts a sound plan as 100', () => {
    expect(gradeSession(review(clean('e1')), catalogue).programme).toBeNull();
    const sound = gradeSession(review(clean('e1', { plan: equalSets({ sets: 3, reps: 10 }) })), catalogue);
    expect(sound).toMatchObject({ programme: 100, state: { score: 100 } });
  });

  it('is provisional, with a wider range, when an exercise was not filmed', () => {
    const grade = gradeSession(review(clean('e1'), entry({ id: 'e2', clips: [] })), catalogue);
    expect(grade).toMatchObject({
      state: { kind: 'provisional', score: 100 },
      range: { low: 75, high: 100 },
    });
  });

  it('has no grade when nothing in it has, and none when it is empty', () => {
    expect(gradeSession(review(entry()), catalogue).state.kind).toBe('none');
    expect(gradeSession(review(), catalogue).state.kind).toBe('none');
  });
});
