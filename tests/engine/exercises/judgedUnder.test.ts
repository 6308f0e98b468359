import { describe, expect, it } from 'vitest';
import { buildCatalogue } from '../../../engine/exercises/buildCatalogue.ts';
import type { Rubric } from '../../../engine/rubric/rubric.ts';
import { fault, shippedRubric } from '../catalogue.ts';
import { file, input, sharedFaults, squat } from './data.ts';

/** The rubric that ships, and the same with two finer criteria. */
const first = shippedRubric();
const finer = (id: string, partOf: string): Rubric['criteria'][number] => {
  const [criterion] = first.criteria;
  if (criterion === undefined) throw new Error('The rubric has no criteria.');
  return { ...criterion, id, partOf };
};
const second: Rubric = {
  ...first,
  version: 2,
  criteria: [...first.criteria, finer('bracing', 'spinePosition'), finer('gaze', 'headPosition')],
};

const alsoJudged = [
  { id: 'bracing', share: 0.1, from: ['side'] },
  { id: 'gaze', share: 0.04, takenFrom: 'headPosition', from: ['side', 'front'] },
];
const narrower = (id: string, criterion: string, narrow: string) => ({ ...fault(id, criterion), narrower: narrow });
const faults = [...sharedFaults, narrower('slack', 'spinePosition', 'bracing')];
const commonFaults = [
  narrower('loose', 'spinePosition', 'bracing'),
  narrower('eyes', 'headPosition', 'gaze'),
  narrower('eyesTwice', 'headPosition', 'gaze'),
  narrower('tilt', 'barPath', 'symmetry'),
  fault('spineAny', 'spinePosition'),
  fault('pathAny', 'barPath'),
];

const under = (rubric: Rubric, also: object | undefined = { alsoJudged }) => {
  const [built] = buildCatalogue({
    ...input(file({ faults, exercises: [{ ...squat(), ...also }] })),
    rubric,
    commonFaults,
  }).exercises;
  if (built === undefined) throw new Error('The catalogue is empty.');
  return built;
};
const sharesOf = (exercise: ReturnType<typeof under>) =>
  Object.fromEntries(exercise.criteria.map(({ id, share }) => [id, Number(share.toFixed(6))]));
const criterionOf = (exercise: ReturnType<typeof under>, id: string) =>
  exercise.faults.find((one) => one.id === id)?.criterion;

describe('an exercise judged by criteria that only one version knows', () => {
  it('keeps its shares under the version that does not know them', () => {
    expect(under(first).criteria).toEqual(squat().criteria);
    expect(under(first).judgedFrom).toEqual(squat().judgedFrom);
  });

  it('gives up a tenth of each share for one, and a part of one share for another: by hand', () => {
    expect(sharesOf(under(second))).toEqual({
      depth: 0.225,
      eccentricTempo: 0.18,
      pauses: 0.09,
      barPath: 0.18,
      headPosition: 0.054,
      spinePosition: 0.135,
      gaze: 0.036,
      bracing: 0.1,
    });
  });

  it('can judge them from the views that are named, besides what each view could judge', () => {
    const { judgedFrom } = under(second);
    expect(judgedFrom.side).toEqual([...(squat().judgedFrom.side ?? []), 'bracing', 'gaze']);
    expect(judgedFrom.front).toEqual(['eccentricTempo', 'pauses', 'gaze']);
    expect(judgedFrom.rear).toEqual(['eccentricTempo']);
  });

  it('puts a fault under its narrower criterion where that is judged, and under the coarser one elsewhere', () => {
    expect(criterionOf(under(second), 'slack')).toBe('bracing');
    expect(criterionOf(under(first), 'slack')).toBe('spinePosition');
    expect(criterionOf(under(second, {}), 'slack')).toBe('spinePosition');
  });

  it('knows the common faults of its own criteria under every version, so that a flag keeps its name', () => {
    for (const rubric of [first, second]) {
      const ids = under(rubric).faults.map((one) => one.id);
      expect(ids).toEqual(expect.arrayContaining(['loose', 'eyes', 'spineAny']));
      expect(ids).not.toContain('tilt');
      expect(ids).not.toContain('pathAny');
    }
    expect(under(second, {}).faults.map((one) => one.id)).not.toContain('loose');
  });
});

describe('judging data that takes what is not there', () => {
  const refuses = (also: object) => () => under(second, { alsoJudged: [also] });

  it('is refused when more is taken from a criterion than it has', () => {
    const greedy = { id: 'gaze', share: 0.11, takenFrom: 'headPosition', from: ['side'] };
    expect(refuses(greedy)).toThrow('more is taken from headPosition than it has');
  });

  it('is refused when a share is taken from a criterion that the exercise has not', () => {
    const lost = { id: 'gaze', share: 0.04, takenFrom: 'grip', from: ['side'] };
    expect(refuses(lost)).toThrow('alsoJudged: "grip" is not in');
  });

  it('is refused when a criterion is part of one that the rubric has not', () => {
    const rubric = { ...second, criteria: [...first.criteria, finer('bracing', 'trunk')] };
    expect(() => under(rubric)).toThrow('rubric, partOf: "trunk" is not in the rubric');
  });
});
