import { describe, expect, it } from 'vitest';
import type { Goal } from '../../../engine/exercises/exercise.ts';
import type { ProgrammeFinding } from '../../../engine/programme/finding.ts';
import { programmeFindings } from '../../../engine/programme/findings.ts';
import { equalSets } from '../../../engine/review/plan.ts';
import type { Entry } from '../../../engine/review/review.ts';
import { sayFinding } from '../../../engine/wording/sayGrade.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { allSix, entry, flag, review, ticks } from '../reviews.ts';

const chest = { direct: ['chest'], indirect: [] };
const bench = exercise({ id: 'bench-press', name: 'Bench press', muscles: chest });
const floor = exercise({
  id: 'floor-press',
  name: 'Floor press',
  muscles: chest,
  rangeCut: { by: 'the floor', fuller: 'bench-press' },
});
const fly = exercise({ id: 'fly', name: 'Fly', compound: false, muscles: chest });
const catalogue = catalogueOf(bench, floor, fly);

const planned = (id: string, tempo?: string): Entry =>
  entry({ id, exercise: id, clips: [], plan: equalSets({ sets: 3, reps: 10, ...(tempo !== undefined && { tempo }) }) });

/** What a finding says in English; empty where there is none. */
const said = (finding: ProgrammeFinding | undefined) =>
  finding === undefined ? { what: '', why: '', suggestion: '', source: '' } : sayFinding(finding, 'en');

const kindsFor = (goal: Goal, ...entries: readonly Entry[]) => {
  const base = review(...entries);
  return programmeFindings({ ...base, trainee: { ...base.trainee, goal } }, catalogue).map(({ kind }) => kind);
};

describe('range cut by the set-up', () => {
  it('is found where nothing in the session goes further, with the exercise that does', () => {
    const [finding] = programmeFindings(review(planned('floor-press')), catalogue);
    expect(finding).toMatchObject({ kind: 'curtailed-range', weight: 'prefer', entryIds: ['floor-press'] });
    const { what, suggestion, source } = said(finding);
    expect(what).toBe('Floor press: the floor ends the range before the muscles are at their longest.');
    expect(suggestion).toContain('bench press');
    expect(source).not.toBe('');
  });

  it('is fine beside the fuller exercise, and for strength, where it is a tool of its own', () => {
    expect(kindsFor('growth', planned('floor-press'), planned('bench-press'))).not.toContain('curtailed-range');
    expect(kindsFor('strength', planned('floor-press'))).not.toContain('curtailed-range');
  });

  it('does not depend on flags, so that what would raise the grade stays exact', () => {
    const flagged = { ...planned('floor-press'), flags: [flag({ criterion: 'depth', weight: 'correct' })] };
    expect(kindsFor('growth', { ...flagged, ticks: ticks(...allSix) })).toEqual(
      kindsFor('growth', planned('floor-press')),
    );
  });
});

describe('holds', () => {
  it('are found when all of a muscle’s are at the short end, once for the muscle', () => {
    const [bench3, fly3] = [planned('bench-press', '2-0-1-3'), planned('fly', '2-0-1-2')];
    const findings = programmeFindings(review(bench3, fly3), catalogue).filter(({ kind }) => kind === 'short-holds');
    expect(findings).toHaveLength(1);
    expect(findings[0]?.entryIds).toEqual(['bench-press', 'fly']);
    expect(said(findings[0]).what).toBe('Every hold for the chest is at the short end: Bench press and Fly.');
  });

  it('are fine when one is at the long end, when only one exercise has one, and when they are mere turns', () => {
    expect(kindsFor('growth', planned('bench-press', '2-0-1-3'), planned('fly', '2-1-1-2'))).not.toContain(
      'short-holds',
    );
    expect(kindsFor('growth', planned('bench-press', '2-0-1-3'), planned('fly', '2-0-1-0'))).not.toContain(
      'short-holds',
    );
    expect(kindsFor('growth', planned('bench-press', '2-0-1-1'), planned('fly', '2-0-1-1'))).not.toContain(
      'short-holds',
    );
  });
});
