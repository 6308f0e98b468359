import { describe, expect, it } from 'vitest';
import type { Exercise, Goal } from '../../../engine/exercises/exercise.ts';
import type { ProgrammeFinding } from '../../../engine/programme/finding.ts';
import { programmeFindings } from '../../../engine/programme/findings.ts';
import { type EqualPlan, equalSets } from '../../../engine/review/plan.ts';
import type { Entry } from '../../../engine/review/review.ts';
import { sayFinding } from '../../../engine/wording/sayGrade.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { entry, review } from '../reviews.ts';

const squat = exercise();
const frontSquat = exercise({ id: 'front-squat', name: 'Front squat' });
const legExtension = exercise({
  id: 'leg-extension',
  name: 'Leg extension',
  compound: false,
  hardestAt: 'short',
  ladder: { easier: [], harder: [], betterSuited: [{ exercise: 'squat', why: 'Loads the long end.' }] },
});
const curl = exercise({ id: 'curl', name: 'Curl', compound: false, muscles: { direct: ['biceps'], indirect: [] } });
const plank = exercise({ id: 'plank', name: 'Plank', beginsWith: 'hold' });
const all: readonly Exercise[] = [squat, frontSquat, legExtension, curl, plank];

const planned = (id: string, plan: Partial<EqualPlan> = {}): Entry =>
  entry({ id, exercise: id, clips: [], plan: equalSets({ sets: 4, reps: 10, ...plan }) });

const found = (goal: Goal, ...entries: readonly Entry[]) => {
  const base = review(...entries);
  return programmeFindings({ ...base, trainee: { ...base.trainee, goal } }, catalogueOf(...all));
};
/** What a finding says in English; empty where there is none. */
const said = (finding: ProgrammeFinding | undefined) =>
  finding === undefined ? { what: '', why: '', suggestion: '', source: '' } : sayFinding(finding, 'en');
const kinds = (goal: Goal, ...entries: readonly Entry[]) => found(goal, ...entries).map((finding) => finding.kind);

describe('reps for the goal', () => {
  it.each([
    ['growth', 4, ['rep-range']],
    ['growth', 5, []],
    ['growth', 30, []],
    ['growth', 31, ['rep-range']],
    ['strength', 1, []],
    ['strength', 6, []],
    ['strength', 7, ['rep-range']],
    ['skill', 40, []],
  ] as const)('%s at %d reps', (goal, reps, expected) => {
    expect(kinds(goal, planned('squat', { reps }))).toEqual(expected);
  });

  it('leaves isolation work alone in a strength plan, and holds in any', () => {
    expect(kinds('strength', planned('curl', { reps: 12 }))).toEqual([]);
    expect(kinds('growth', planned('plank', { reps: 1 }))).toEqual([]);
  });

  it('asks for harder sets when many reps are kept in reserve for growth', () => {
    expect(kinds('growth', planned('squat', { repsInReserve: 6 }))).toEqual(['effort']);
    expect(kinds('growth', planned('squat', { repsInReserve: 2 }))).toEqual([]);
  });
});

describe('order', () => {
  const small = planned('leg-extension');
  const big = planned('squat', { reps: 5 });
  it('for strength, wants the compound exercise before the isolation one', () => {
    expect(found('strength', small, big)).toMatchObject([
      { kind: 'order', weight: 'adjust', entryIds: ['leg-extension', 'squat'] },
    ]);
    expect(kinds('strength', big, small)).toEqual([]);
  });
  it('says nothing when the muscles differ, or the goal is growth', () => {
    expect(kinds('strength', planned('curl'), big)).toEqual([]);
    expect(kinds('growth', small, big)).toEqual([]);
  });
});

describe('two heavy exercises for one muscle', () => {
  it('suggests half the sets of both', () => {
    const [finding] = found('strength', planned('squat', { reps: 5 }), planned('front-squat', { sets: 3, reps: 5 }));
    expect(finding).toMatchObject({ kind: 'doubled-load', weight: 'prefer' });
    expect(said(finding).suggestion).toContain('2 sets of Squat, 2 sets of Front squat');
  });
  it('says nothing when one of them is light or far from failure', () => {
    expect(kinds('growth', planned('squat', { reps: 5 }), planned('front-squat', { reps: 12 }))).toEqual([]);
    expect(
      kinds('strength', planned('squat', { reps: 5 }), planned('front-squat', { reps: 5, repsInReserve: 4 })),
    ).toEqual([]);
  });
});

describe('the short end', () => {
  it('offers the better-suited variant, for growth alone', () => {
    const [finding] = found('growth', planned('leg-extension'));
    expect(finding).toMatchObject({ kind: 'short-end-load', weight: 'prefer' });
    expect(said(finding).suggestion).toContain('squat');
    expect(kinds('skill', planned('leg-extension'))).toEqual([]);
  });
  it('says nothing when that variant is in the session already', () => {
    expect(kinds('growth', planned('leg-extension'), planned('squat'))).toEqual([]);
  });
  it('notices a pause that is only there', () => {
    expect(kinds('growth', planned('squat', { tempo: '3-0-1-2' }))).toEqual(['short-end-pause']);
    expect(kinds('growth', planned('squat', { tempo: '3-1-1-2' }))).toEqual([]);
    expect(kinds('growth', planned('squat', { tempo: '3-0-1-0' }))).toEqual([]);
  });
});

it('has nothing to say without a plan', () => {
  expect(kinds('growth', entry({ exercise: 'leg-extension' }))).toEqual([]);
});

it('gives every finding its own id, a reason, a suggestion and a source, and at most the weight adjust', () => {
  const many = found(
    'growth',
    planned('leg-extension', { reps: 40, repsInReserve: 8 }),
    planned('front-squat', { reps: 4, tempo: '3-0-X-2' }),
    { ...planned('squat', { reps: 4, repsInReserve: 1 }), id: 'second' },
  );
  expect(new Set(many.map((finding) => finding.id)).size).toBe(many.length);
  expect(many.length).toBeGreaterThan(4);
  for (const finding of many) {
    const { what, why, suggestion, source } = sayFinding(finding, 'en');
    expect([what, why, suggestion].every((text) => text.endsWith('.'))).toBe(true);
    expect(source).toMatch(/[^.]$/);
    expect(['prefer', 'adjust']).toContain(finding.weight);
  }
});
