import { readdirSync, readFileSync } from 'node:fs';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { type Exercise, exerciseFileSchema } from '../../../engine/exercises/exercise.ts';
import { gradeEntry } from '../../../engine/grading/index.ts';
import type { Flag } from '../../../engine/review/index.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { allSix, entry, flag, ticks } from '../reviews.ts';

const folder = new URL('../../../seeds/exercises/', import.meta.url);
const shipped = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .flatMap((name) => v.parse(exerciseFileSchema, JSON.parse(readFileSync(new URL(name, folder), 'utf8'))).exercises)
  .filter((one) => allSix.every((id) => one.criteria.some((criterion) => criterion.id === id)));

const judged: readonly Exercise[] = [exercise(), ...shipped];

// What experienced coaches would expect of such a set: common practice, no source.
const vignettes: readonly [string, readonly Flag[], readonly string[]][] = [
  ['a clean set', [], ['A+']],
  ['a head preference on every rep', [flag({ criterion: 'headPosition', weight: 'prefer' })], ['A+']],
  [
    'quick eccentrics on every rep and no long pause',
    [
      flag({ criterion: 'eccentricTempo', weight: 'adjust' }),
      flag({ id: 'f2', criterion: 'pauses', weight: 'prefer' }),
    ],
    ['A-'],
  ],
  ['every rep well short of depth', [flag({ criterion: 'depth', weight: 'correct' })], ['C']],
  ['one rep in five short', [flag({ criterion: 'depth', weight: 'correct', reps: [3] })], ['A-', 'A']],
  ['an unsafe set-up once', [flag({ criterion: 'spinePosition', weight: 'stop', reps: [1] })], ['D+', 'D', 'D-', 'F']],
];

describe.each(judged.map((one) => [one.id, one] as const))('%s', (_id, one) => {
  it.each(vignettes)('%s', (_name, flags, letters) => {
    const grade = gradeEntry(
      entry({ exercise: one.id, flags: [...flags], ticks: ticks(...one.criteria.map((criterion) => criterion.id)) }),
      catalogueOf(one),
    );
    expect(grade.state.kind).toBe('graded');
    expect(letters).toContain(grade.state.kind === 'none' ? '' : grade.state.mark.letter);
  });
});
