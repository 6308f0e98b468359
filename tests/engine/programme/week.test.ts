import { describe, expect, it } from 'vitest';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { programmeFindings } from '../../../engine/programme/findings.ts';
import { fractionalSets, volumeLoadKg, weeklyBand } from '../../../engine/programme/week.ts';
import { equalSets } from '../../../engine/review/plan.ts';
import type { Entry, Review } from '../../../engine/review/review.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { allSix, clip, ticks } from '../reviews.ts';
import { inEnglish, only } from './sessions.ts';

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
  version: 4,
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

  it('leave out planned sets that are easy, and those that were not done', () => {
    const done = { ...entry('bench', 4), setsDone: 1 };
    expect(fractionalSets([session('2026-03-02', done)], catalogue)[0]).toEqual({ muscle: 'chest', sets: 1 });
    expect(fractionalSets([session('2026-03-02', entry('bench', 4, 10, 6))], catalogue)).toEqual([]);
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

  it('speak of returns that diminish, not of none', () => {
    const findings = programmeFindings(session('2026-03-08', entry('bench', 11)), catalogue, [
      session('2026-03-02', entry('bench', 10)),
    ]);
    const { why } = inEnglish(only(findings, 'weekly-volume'));
    expect(why).toContain('gives less');
    expect(why).not.toContain('no more');
  });

  it('say when hard sets for a muscle come less than two days apart (Morán-Navarro et al. 2017)', () => {
    const today = session('2026-03-08', entry('bench', 3));
    expect(kinds(today, [session('2026-03-07', entry('bench', 3))])).toContain('spacing');
    expect(kinds(today, [session('2026-03-06', entry('bench', 3))])).not.toContain('spacing');
    expect(kinds(today, [session('2026-03-07', entry('bench', 3, 10, 5))])).not.toContain('spacing');
  });

  it('name all their muscles at once', () => {
    const day = (date: string) => session(date, entry('bench', 3), entry('pushdown', 3));
    const found = programmeFindings(day('2026-03-08'), catalogue, [day('2026-03-07')]);
    expect(inEnglish(only(found, 'spacing')).what).toContain('chest and triceps');
  });

  it('stand in the grade and cost nothing: a grade does not change when another session does', () => {
    const looked: Entry = { ...entry('bench', 3), clips: [clip()], ticks: ticks(...allSix) };
    const today = session('2026-03-08', looked);
    const alone = gradeSession(today, catalogue);
    const known = gradeSession(today, catalogue, [session('2026-03-07', entry('bench', 19))]);
    expect(known.findings.map(({ kind }) => kind).sort()).toEqual(['spacing', 'weekly-volume']);
    expect(alone.findings).toEqual([]);
    expect([known.state, known.programme, known.raises]).toEqual([alone.state, alone.programme, alone.raises]);
  });
});
