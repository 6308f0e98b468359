import { describe, expect, it } from 'vitest';
import { equalSets } from '../../../../engine/review/plan.ts';
import { outsideS, type TempoBand, tempoToMeet, tempoWords } from '../../../../renderer/review/measures/tempoTarget.ts';
import { backSquat } from './backSquat.ts';
import { rep } from './rep.ts';

const askedOf = (plan: { readonly tempo?: string } | undefined) => {
  const tempo = tempoToMeet(
    plan === undefined ? undefined : equalSets({ sets: 3, reps: 5, ...plan }),
    backSquat,
    'growth',
  );
  if (tempo === null) throw new Error('the exercise has a tempo');
  return tempo;
};

it('holds a set against its plan; X asks for no time', () => {
  const planned = askedOf({ tempo: '3-1-X-0' });
  expect(planned.from).toBe('plan');
  expect(planned.words).toBe('3-1-X-0');
  expect(planned.bands.eccentric?.asked).toEqual([3, 3]);
  expect(planned.bands.concentric).toBeNull();
});

it('holds a set without a planned tempo against the exercise, for the trainee’s goal', () => {
  const target = askedOf({});
  expect(target.from).toBe('exercise');
  expect(target.bands.eccentric?.asked).toEqual(backSquat.targets.tempo.growth.eccentricS);
  expect(askedOf(undefined)).toEqual(target);
  expect(tempoToMeet(equalSets({ sets: 3, reps: 5, tempo: '3-1-X-0' }), null, 'growth')).toBeNull();
});

describe('a time beside what is asked', () => {
  const band: TempoBand = { asked: [2, 3], passes: { fromS: 1.5, toS: 3.5, tooLongFromS: 4 } };
  it.each([
    ['well short', { value: 1.2, plusMinus: 0.1 }, band, -0.8],
    ['short, but not too short to pass', { value: 1.7, plusMinus: 0.1 }, band, 0],
    ['too short by less than its uncertainty', { value: 1.45, plusMinus: 0.1 }, band, 0],
    ['as asked', { value: 2.5, plusMinus: 0.1 }, band, 0],
    ['a little long', { value: 3.8, plusMinus: 0.1 }, band, 0],
    ['well long', { value: 4.5, plusMinus: 0.1 }, band, 1.5],
    ['asked for no time', { value: 9, plusMinus: 0.1 }, null, 0],
    ['held against nothing', { value: 9, plusMinus: 0.1 }, { ...band, passes: null }, 0],
  ] as const)('is %s', (_what, measured, beside, away) => {
    expect(outsideS(measured, beside)).toBeCloseTo(away, 9);
  });
});

it('names what of a rep is off, by how much and which way', () => {
  // Two seconds where three are asked; four where one is.
  const planned = askedOf({ tempo: '3-0-X-0' });
  expect(tempoWords(rep, planned)).toBe('eccentric 1.0 s too short');
  const slower = { ...rep.durationsS, eccentric: { value: 6, plusMinus: 0.03 } };
  expect(tempoWords({ ...rep, durationsS: slower }, planned)).toBe('eccentric 3.0 s too long');
});
