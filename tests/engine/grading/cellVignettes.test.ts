import { describe, expect, it } from 'vitest';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import type { Entry, Flag } from '../../../engine/review/review.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { clip, entry, flag, review, ticks } from '../reviews.ts';
import { gradeEntry } from './gradeEntry.ts';

/*
 * What experienced coaches would expect of such a set: common practice, no source. Version 3 by hand, s a criterion's
 * share: 100 less 0.5 of what the mean lacks, 0.325 of what the lowest lacks to 99 and 0.2
 * of what it lacks to 40, 0.25 of what the second lowest lacks to 90. One fault on every rep that costs d points of its criterion so takes 0.5 × d × s + 0.325 × (d − 1).
 */
type Vignette = readonly [name: string, flags: readonly Flag[], marks: readonly string[]];

const spine = flag({ id: 'spine', criterion: 'spinePosition', severity: 'correct' });
const hipsFirst = (criterion: string): Flag => flag({ id: 'hips', criterion, severity: 'correct' });
const poor = ['D', 'D-', 'F'];

const vignettes: readonly Vignette[] = [
  // 100
  ['a clean set', [], ['A+']],
  // prefer: 4 s + 2.275, so up to s = 0.18 it is at 97 or above
  ['a head preference on every rep', [flag({ criterion: 'headPosition', severity: 'prefer' })], ['A+']],
  ['eyes that wander on every rep', [flag({ criterion: 'gaze', severity: 'prefer' })], ['A+']],
  ['a shortened end missed by a shade', [flag({ criterion: 'shortRange', severity: 'prefer' })], ['A+']],
  ['a detail of the set-up', [flag({ criterion: 'setUp', severity: 'prefer' })], ['A+']],
  // adjust: 10 s + 6.175, so 7 to 10 for s from 0.0825 to 0.3825
  ['quick lowering on every rep', [flag({ criterion: 'eccentricTempo', severity: 'adjust' })], ['A-']],
  // the same and prefer on the pauses, 4 s more; a second lowest of 92 costs nothing
  [
    'quick lowering and no pause stretched',
    [
      flag({ criterion: 'eccentricTempo', severity: 'adjust' }),
      flag({ id: 'f2', criterion: 'pauses', severity: 'prefer' }),
    ],
    ['A-'],
  ],
  // correct: 30 s + 19.175, so 23 to 27 for s from 0.1275 to 0.2608
  ['every rep well short', [flag({ criterion: 'depth', severity: 'correct' })], ['C']],
  // one in five: d = 12, 6 s + 3.575
  ['one rep in five short', [flag({ criterion: 'depth', severity: 'correct', reps: [3] })], ['A-', 'A']],
  ['one loose rep in five', [flag({ criterion: 'bracing', severity: 'adjust', reps: [2] })], ['A+', 'A']],
  // two corrects: 30 (s + s') + 19.175 + 0.25 × 50, above 33 from s + s' = 0.05
  ['rounding and hips first, in the path', [spine, hipsFirst('barPath')], poor],
  ['rounding and hips first, in control', [spine, hipsFirst('control')], poor],
  ['rounding and well short', [spine, hipsFirst('depth')], poor],
  ['an unsafe set-up once', [flag({ criterion: 'setUp', severity: 'stop', reps: [1] })], ['D+', ...poor]],
  ['a spine that gives way once', [{ ...spine, severity: 'stop', reps: [1] }], ['D+', ...poor]],
];

const third = shippedUnder(3);
const first = shippedUnder(1);

/** The criteria that the first version knows: a session that was ticked by these alone. */
const coarse = (id: string): string[] =>
  first.exercises.find((exercise) => exercise.id === id)?.criteria.map((criterion) => criterion.id) ?? [];

describe.each(third.exercises)('$id', (exercise) => {
  const ids = exercise.criteria.map((criterion) => criterion.id);
  const fitting = vignettes.filter(([, flags]) => flags.every((each) => ids.includes(each.criterion)));
  const seenFrom = clip({ view: null });

  it.each(fitting)('%s', (_name, flags, marks) => {
    const judged = entry({ exercise: exercise.id, clips: [seenFrom], flags: [...flags], ticks: ticks(...ids) });
    const { state, coverage } = gradeEntry(judged, third);
    expect([state.kind, coverage]).toEqual(['graded', 1]);
    expect(marks).toContain(state.kind === 'none' ? '' : state.mark);
  });

  const known = coarse(exercise.id);
  const knownOnly = vignettes.filter(([, flags]) => flags.every((each) => known.includes(each.criterion)));

  it.each(knownOnly)('%s, looked at by the criteria of version 1 alone', (_name, flags, marks) => {
    const judged = entry({ exercise: exercise.id, clips: [seenFrom], flags: [...flags], ticks: ticks(...known) });
    const { state } = gradeEntry(judged, third);
    expect(state.kind).toBe('graded');
    expect(marks).toContain(state.kind === 'none' ? '' : state.mark);
  });
});

describe('hips first and rounding on every rep, as the library names them', () => {
  // Both in the spine leave 16 of 100: 42 s + 26.975 + 0.2 × 24, above 33 from s = 0.0292.
  const both = third.exercises.flatMap((exercise) => {
    const hips = exercise.faults.find(({ id }) => id === 'hipsRiseFirst');
    return hips === undefined ? [] : [{ exercise, id: exercise.id, criterion: hips.criterion }];
  });

  it.each(both)('in $id is a D or worse', ({ exercise, criterion }) => {
    const judged = entry({
      exercise: exercise.id,
      flags: [spine, hipsFirst(criterion)],
      ticks: ticks(...exercise.criteria.map(({ id }) => id)),
    });
    const { state } = gradeSession(review(judged), third);
    expect(poor).toContain(state.kind === 'none' ? '' : state.mark);
  });

  it('is looked for where there is such a fault', () => {
    expect(both.length).toBeGreaterThan(5);
  });
});

describe('a session', () => {
  const lift = (exercise: string, flags: readonly Flag[]) => {
    const own = third.exercises.find(({ id }) => id === exercise)?.criteria ?? [];
    const id = `${exercise}-clip`;
    return entry({
      id: exercise,
      exercise,
      clips: [clip({ id, view: null })],
      flags: flags.map((one) => ({ ...one, id: `${exercise}-${one.id}`, clip: id })),
      ticks: own.map((criterion) => ({ clip: id, criterion: criterion.id, reps: 'set' as const })),
    });
  };
  const quick = flag({ criterion: 'eccentricTempo', severity: 'adjust' });
  const markOf = (...entries: readonly Entry[]) => {
    const { state } = gradeSession(review(...entries), third);
    return state.kind === 'none' ? '' : state.mark;
  };
  const lifts = ['back-squat', 'bench-press', 'deadlift', 'bent-over-row', 'lateral-raise'];

  it('of quick lowering on every rep of every lift is an A-, as each of its lifts', () => {
    const entries = lifts.map((id) => lift(id, [quick]));
    expect(gradeSession(review(...entries), third).entries.map(({ state }) => state)).toEqual(
      lifts.map(() => expect.objectContaining({ kind: 'graded', mark: 'A-' })),
    );
    expect(markOf(...entries)).toBe('A-');
  });

  it('of clean sets is an A+, and one with a stop in one of five lifts no better than D+', () => {
    expect(markOf(...lifts.map((id) => lift(id, [])))).toBe('A+');
    const unsafe = flag({ criterion: 'spinePosition', severity: 'stop', reps: [1] });
    expect(markOf(...lifts.map((id, index) => lift(id, index === 0 ? [unsafe] : [])))).toBe('D+');
  });
});
