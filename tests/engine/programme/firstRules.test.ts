import { describe, expect, it } from 'vitest';
import type { Exercise, Goal } from '../../../engine/exercises/exercise.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { firstRuleSeverities } from '../../../engine/programme/firstRules.ts';
import { type EqualPlan, equalSets } from '../../../engine/review/plan.ts';
import type { Entry } from '../../../engine/review/review.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { entry, review, ticks } from '../reviews.ts';

const squat = exercise();
const frontSquat = exercise({ id: 'front-squat', name: 'Front squat' });
const legExtension = exercise({
  id: 'leg-extension',
  name: 'Leg extension',
  compound: false,
  hardestAt: 'shortened',
  ladder: { easier: [], harder: [], betterSuited: [{ exercise: 'squat', why: 'Loads the stretched end.' }] },
});
const plank = exercise({ id: 'plank', name: 'Plank', beginsWith: 'hold' });
const all: readonly Exercise[] = [squat, frontSquat, legExtension, plank];
const catalogue = catalogueOf(...all);

const planned = (id: string, plan: Partial<EqualPlan> = {}): Entry =>
  entry({ id, exercise: id, clips: [], plan: equalSets({ sets: 4, reps: 10, ...plan }) });

const severitiesOf = (goal: Goal, ...entries: readonly Entry[]) => {
  const base = review(...entries);
  return firstRuleSeverities({ ...base, trainee: { ...base.trainee, goal } }, catalogue);
};

describe('what a plan costs under versions 1 and 2', () => {
  it.each([
    ['growth', 4, ['adjust']],
    ['growth', 5, []],
    ['growth', 30, []],
    ['growth', 31, ['adjust']],
    ['strength', 6, []],
    ['strength', 7, ['adjust']],
    ['skill', 40, []],
  ] as const)('%s at %d reps', (goal, reps, expected) => {
    expect(severitiesOf(goal, planned('squat', { reps }))).toEqual(expected);
  });

  it.each([
    ['a set that ends with five in reserve', [planned('squat', { repsInReserve: 5 })], ['prefer']],
    [
      'two heavy lifts for the same muscles',
      [planned('squat', { reps: 6 }), planned('front-squat', { reps: 8 })],
      ['prefer'],
    ],
    ['an exercise that is hardest where it is short, alone', [planned('leg-extension')], ['prefer']],
    ['the same beside one that is not', [planned('leg-extension'), planned('squat')], []],
    [
      'many sets for one muscle, which these rules never counted',
      [planned('squat', { sets: 9 }), planned('front-squat', { sets: 9 })],
      [],
    ],
    ['a hold', [planned('plank', { reps: 1 })], []],
  ] as const)('growth: %s', (_, entries, expected) => {
    expect(severitiesOf('growth', ...entries)).toEqual(expected);
  });

  it('strength: isolation before the lift of the same muscles costs an adjust', () => {
    expect(severitiesOf('strength', planned('leg-extension'), planned('squat', { reps: 5 }))).toEqual(['adjust']);
  });

  it('counts in the session by these severities, whatever is advised today: 18 hard sets cost nothing', () => {
    const clean = (id: string) => ({
      ...entry({ id, exercise: id }),
      ticks: ticks('depth', 'eccentricTempo', 'barPath'),
    });
    const many = { plan: equalSets({ sets: 9, reps: 10 }) };
    const grade = gradeSession(review({ ...clean('squat'), ...many }, { ...clean('front-squat'), ...many }), catalogue);
    expect(grade.findings.map(({ kind }) => kind)).toContain('volume');
    expect(grade).toMatchObject({ technique: 100, programme: 100, state: { score: 100 } });
  });
});
