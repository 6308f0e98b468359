import { describe, expect, it } from 'vitest';
import { programmeFindings } from '../../../engine/programme/findings.ts';
import { fractionalSets, volumeLoadKg, weeklyBand } from '../../../engine/programme/week.ts';
import { equalSets } from '../../../engine/review/plan.ts';
import type { Entry, Review } from '../../../engine/review/review.ts';
import { catalogueOf, exercise } from '../catalogue.ts';

const bench = exercise({
  id: 'bench',
  name: 'Bench',
  muscles: { direct: ['chest'], indirect: ['triceps', 'front deltoid'] },
});
const pushdown = exercise({
  id: 'pushdown',
  name: 'Pushdown',
  compound: false,
  muscles: { direct: ['triceps'], indirect: [] },
});
const catalogue = catalogueOf(bench, pushdown);

const entry = (id: string, sets: number, reps = 10, repsInReserve = 1): Entry => ({
  id: `${id}-entry`,
  exercise: id,
  plan: equalSets({ sets, reps, repsInReserve }),
  clips: [],
  flags: [],
  ticks: [],
});

const session = (date: string, ...entries: Entry[]): Review => ({
  format: 'rackside-review',
  version: 1,
  voice: 'coach',
  trainee: { name: 'Alva', goal: 'growth', experience: 'experienced', units: 'kg', minor: false },
  session: { id: date, title: '', date, notes: '', painNote: '' },
  entries,
});

const kinds = (review: Review, earlier: readonly Review[]): string[] =>
  programmeFindings(review, catalogue, earlier).map(({ kind }) => kind);

describe('sets a muscle', () => {
  it('count a direct set as one and an indirect one as a half: two days of bench 4 and pushdown 3 give chest 8, triceps 10, front deltoid 4 (Pelland et al. 2025, worked by hand)', () => {
    const days = ['2026-03-02', '2026-03-05'].map((date) => session(date, entry('bench', 4), entry('pushdown', 3)));
    expect(fractionalSets(days, catalogue)).toEqual([
      { muscle: 'triceps', sets: 10 },
      { muscle: 'chest', sets: 8 },
      { muscle: 'front deltoid', sets: 4 },
    ]);
  });

  it.each([
    [4.5, 'low'],
    [5, 'moderate'],
    [9.5, 'moderate'],
    [10, 'target'],
    [20, 'target'],
    [20.5, 'high'],
  ])('%s a week is %s (Schoenfeld et al. 2017, J Sports Sci 35:1073)', (sets, band) => {
    expect(weeklyBand(sets)).toBe(band);
  });
});

describe('volume load', () => {
  it.each([
    [{ sets: 4, reps: 8, loadKg: 100 }, 3200],
    [{ sets: 3, reps: 5, loadKg: 142.5 }, 2137.5],
    [{ sets: 3, reps: 5 }, null],
  ])('%j is %s kg (sets × reps × load)', (plan, kilograms) => {
    expect(volumeLoadKg(equalSets(plan))).toBe(kilograms);
  });
});

describe('findings over the week', () => {
  it('say when a muscle gets more than 20 sets in seven days, and only with an earlier session known', () => {
    const today = session('2026-03-08', entry('bench', 11));
    expect(kinds(today, [])).not.toContain('weekly-volume');
    expect(kinds(today, [session('2026-03-02', entry('bench', 10))])).toContain('weekly-volume');
    expect(kinds(today, [session('2026-03-01', entry('bench', 10))])).not.toContain('weekly-volume');
  });

  it('say when hard sets for a muscle come less than two days apart (Morán-Navarro et al. 2017)', () => {
    const today = session('2026-03-08', entry('bench', 3));
    expect(kinds(today, [session('2026-03-07', entry('bench', 3))])).toContain('spacing');
    expect(kinds(today, [session('2026-03-06', entry('bench', 3))])).not.toContain('spacing');
    expect(kinds(today, [session('2026-03-07', entry('bench', 3, 10, 5))])).not.toContain('spacing');
  });
});

describe('the profile of a session', () => {
  it('says when every exercise for a muscle is hardest where it is short', () => {
    const short = (id: string) => exercise({ id, hardestAt: 'short' });
    const both = catalogueOf(short('one'), short('two'));
    const found = programmeFindings(session('2026-03-08', entry('one', 3), entry('two', 3)), both);
    expect(found.map(({ kind }) => kind)).toContain('profile-balance');
    const mixed = catalogueOf(short('one'), exercise({ id: 'two', hardestAt: 'long' }));
    const other = programmeFindings(session('2026-03-08', entry('one', 3), entry('two', 3)), mixed);
    expect(other.map(({ kind }) => kind)).not.toContain('profile-balance');
  });
});

describe('the order of loads, for strength', () => {
  const strong = (review: Review): Review => ({ ...review, trainee: { ...review.trainee, goal: 'strength' } });

  it('says when light work comes before heavy work for the same muscle', () => {
    const squats = catalogueOf(exercise({ id: 'light' }), exercise({ id: 'heavy' }));
    const wrong = strong(session('2026-03-08', entry('light', 3, 12), entry('heavy', 3, 3)));
    expect(programmeFindings(wrong, squats).map(({ kind }) => kind)).toContain('load-order');
    const right = strong(session('2026-03-08', entry('heavy', 3, 3), entry('light', 3, 12)));
    expect(programmeFindings(right, squats).map(({ kind }) => kind)).not.toContain('load-order');
  });

  it('says when the load climbs from set to set', () => {
    const clip = (id: string, loadKg: number) => ({ id, name: id, view: null, realTimeFactor: 1, reps: [], loadKg });
    const climbing = { ...entry('bench', 3, 5), clips: [clip('a', 80), clip('b', 100)] };
    const falling = { ...entry('bench', 3, 5), clips: [clip('a', 100), clip('b', 80)] };
    const kindsOf = (one: Entry) => programmeFindings(strong(session('2026-03-08', one)), catalogue).map((f) => f.kind);
    expect(kindsOf(climbing)).toContain('set-order');
    expect(kindsOf(falling)).not.toContain('set-order');
  });
});
