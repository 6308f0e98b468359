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

describe('a criterion that is judged on every exercise', () => {
  const setUp = { ...finer('setUp', 'bracing'), everywhere: { share: 0.2 } };
  const third: Rubric = { ...second, version: 3, criteria: [...second.criteria, setUp] };
  const everywhere = [
    { ...fault('slippery', 'spinePosition'), narrower: ['bracing', 'setUp'], everywhere: true },
    { ...fault('looseDisc', 'spinePosition'), narrower: ['bracing', 'setUp'], everywhere: true, with: ['barbell'] },
  ];
  const judged = (rubric: Rubric, change: object) => {
    const [built] = buildCatalogue({
      ...input(file({ faults, exercises: [{ ...squat(), ...change }] })),
      rubric,
      commonFaults: [...commonFaults, ...everywhere],
    }).exercises;
    if (built === undefined) throw new Error('The catalogue is empty.');
    return built;
  };
  const withOwn = { alsoJudged: [{ id: 'setUp', share: 0.1, from: ['side'] }] };

  it('takes its share of all others in proportion, on an exercise that names nothing: by hand', () => {
    expect(sharesOf(judged(third, { needs: ['barbell'] }))).toEqual({
      depth: 0.2,
      eccentricTempo: 0.16,
      pauses: 0.08,
      barPath: 0.16,
      headPosition: 0.08,
      spinePosition: 0.12,
      setUp: 0.2,
    });
  });

  it('can be judged from every view, also from one that shows nothing else', () => {
    const { judgedFrom } = judged(third, { needs: ['barbell'] });
    expect(Object.values(judgedFrom).filter((criteria) => criteria.includes('setUp'))).toHaveLength(4);
    expect(judgedFrom.oblique).toEqual(['setUp']);
  });

  it('has the share and the views that an exercise gives it itself', () => {
    const own = judged(third, { ...withOwn, needs: ['barbell'] });
    expect(sharesOf(own)).toMatchObject({ setUp: 0.1, depth: 0.225 });
    expect(own.judgedFrom.front).not.toContain('setUp');
  });

  it('has its faults under the narrowest criterion that is judged', () => {
    const places = [first, second, third].map((rubric) =>
      criterionOf(judged(rubric, { alsoJudged, needs: ['barbell'] }), 'slippery'),
    );
    expect(places).toEqual(['spinePosition', 'bracing', 'setUp']);
  });

  it('has a fault of equipment only where the exercise needs that equipment', () => {
    expect(criterionOf(judged(third, { needs: ['barbell'] }), 'looseDisc')).toBe('setUp');
    expect(() => judged(third, { needs: ['dumbbells'] })).toThrow('setUp has 1 faults');
    expect(criterionOf(judged(second, { needs: ['dumbbells'] }), 'looseDisc')).toBeUndefined();
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
