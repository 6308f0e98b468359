import { describe, expect, it } from 'vitest';
import { joints, pm, rep, shippedExercise, toMend } from './sets.ts';

const drifting = (forwardM: number, backM: number, largestM = 0) =>
  rep(1, {
    driftForwardM: pm(forwardM, 0.01),
    driftBackM: pm(backM, 0.01),
    largestDeviation: { m: pm(largestM, 0.01), atS: 12.2, heightShare: 0.3 },
  });

describe('the path of a back squat, within 5 cm', () => {
  it('forwards, where it is furthest', () => {
    expect(toMend([drifting(0.09, 0, 0.09)])).toEqual([
      {
        id: 'barPath.driftsForward',
        criterion: 'barPath',
        fault: 'barDriftsForward',
        severity: 'adjust',
        reps: [1],
        atS: 12.2,
        measure: { name: 'forward drift', value: 0.09, plusMinus: 0.01, unit: 'm' },
        sentence: 'Rep 1 leaves its path by 9 cm ± 1 cm forwards; up to 5 cm is fine.',
      },
    ]);
  });

  it('backwards, by little, in the concentric where the other side is further', () => {
    expect(toMend([drifting(0.055, 0.07, 0.09)])).toMatchObject([
      { id: 'barPath.driftsBack', fault: 'barDriftsBack', severity: 'prefer', atS: 13.5 },
    ]);
  });

  it('within its uncertainty is not told', () => {
    expect(toMend([drifting(0.059, 0.06)])).toEqual([]);
  });
});

it.each(['push-up', 'guided-rail-squat'])('%s has no path to leave', (id) => {
  expect(toMend([drifting(0.3, 0.3, 0.3)], { exercise: shippedExercise(id) })).toEqual([]);
});

describe('a load that sinks on its way up', () => {
  const sinking = [rep(1, { downOnWayUpM: pm(0.04, 0.005) })];

  it('is told in the concentric', () => {
    expect(toMend(sinking)).toMatchObject([{ id: 'barPath.goesBack', fault: null, severity: 'adjust', atS: 13.5 }]);
    expect(toMend([rep(1, { downOnWayUpM: pm(0.014, 0.005) })])).toEqual([]);
  });

  it('belongs to control where the rubric and the exercise judge it', () => {
    const of = (version: 1 | 2) => {
      const exercise = shippedExercise('lateral-raise', version);
      return toMend(sinking, { exercise, view: null, rubricCriteria: exercise.criteria.map(({ id }) => id) });
    };
    expect(of(2)).toMatchObject([{ id: 'control.goesBack', fault: 'wavers', criterion: 'control' }]);
    expect(of(1)).toMatchObject([{ id: 'barPath.goesBack', fault: 'wavers', criterion: 'barPath' }]);
  });
});

describe('the head, within 20 degrees', () => {
  const tipped = (value: number, plusMinus = 5) => [rep(1, { joints: joints({ headTrunkDeg: pm(value, plusMinus) }) })];

  it.each([
    [38, 'chinDrops', /by 40° ± 10°, chin down; up to 20° is fine/],
    [-38, 'headTiltsBack', /by 40° ± 10°, chin up; up to 20° is fine/],
  ])('%d degrees', (value, fault, sentence) => {
    expect(toMend(tipped(value))).toMatchObject([{ fault, sentence: expect.stringMatching(sentence) }]);
  });

  it('is left alone within its uncertainty', () => {
    expect(toMend(tipped(24))).toEqual([]);
    expect(toMend(tipped(38, 20))).toEqual([]);
  });
});
