import { describe, expect, it } from 'vitest';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Flag } from '../../../engine/review/review.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { allSix, entry, flag, ticks } from '../reviews.ts';
import { gradeEntry } from './gradeEntry.ts';

// What experienced coaches would expect of such a set: common practice, no source.
const vignettes: readonly [string, readonly Flag[], readonly string[]][] = [
  ['a clean set', [], ['A+']],
  ['a head preference on every rep', [flag({ criterion: 'headPosition', severity: 'prefer' })], ['A+']],
  [
    'quick eccentrics on every rep and no pause stretched',
    [
      flag({ criterion: 'eccentricTempo', severity: 'adjust' }),
      flag({ id: 'f2', criterion: 'pauses', severity: 'prefer' }),
    ],
    ['A-'],
  ],
  ['every rep well short of depth', [flag({ criterion: 'depth', severity: 'correct' })], ['C']],
  ['one rep in five short', [flag({ criterion: 'depth', severity: 'correct', reps: [3] })], ['A-', 'A']],
  [
    'an unsafe set-up once',
    [flag({ criterion: 'spinePosition', severity: 'stop', reps: [1] })],
    ['D+', 'D', 'D-', 'F'],
  ],
];

// The same of the criteria that came with version 2, where a lift is judged by them: common practice, no source.
const further: typeof vignettes = [
  ['eyes that wander on every rep', [flag({ criterion: 'gaze', severity: 'prefer' })], ['A+']],
  ['a shortened end missed by a shade', [flag({ criterion: 'shortRange', severity: 'prefer' })], ['A+']],
  ['one side that leads on every rep', [flag({ criterion: 'symmetry', severity: 'adjust' })], ['A-', 'A']],
  ['one loose rep in five', [flag({ criterion: 'bracing', severity: 'adjust', reps: [2] })], ['A+']],
  ['momentum in every rep', [flag({ criterion: 'control', severity: 'correct' })], ['B-', 'B', 'C+']],
  ['no way out of a failed rep, once', [flag({ criterion: 'bracing', severity: 'stop', reps: [1] })], ['D+', 'D', 'F']],
];

const judged: readonly [string, Catalogue][] = [1, 2].flatMap((version) =>
  shippedUnder(version)
    .exercises.filter((one) => allSix.every((id) => one.criteria.some((criterion) => criterion.id === id)))
    .map((one): [string, Catalogue] => [
      `${one.id} under version ${version}`,
      { ...shippedUnder(version), exercises: [one] },
    ]),
);

describe.each([['the worked squat', catalogueOf(exercise())] as const, ...judged])('%s', (_name, catalogue) => {
  const [one = exercise()] = catalogue.exercises;
  const ids = one.criteria.map((criterion) => criterion.id);
  const fitting = [...vignettes, ...further].filter(([, flags]) => flags.every((each) => ids.includes(each.criterion)));

  it.each(fitting)('%s', (_vignette, flags, letters) => {
    const grade = gradeEntry(entry({ exercise: one.id, flags: [...flags], ticks: ticks(...ids) }), catalogue);
    expect(grade.state.kind).toBe('graded');
    expect(letters).toContain(grade.state.kind === 'none' ? '' : grade.state.mark);
  });
});
