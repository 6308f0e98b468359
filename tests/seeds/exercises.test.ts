import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { faultsFor } from '../../engine/exercises/catalogue.ts';
import { exerciseFileSchema } from '../../engine/exercises/exercise.ts';
import { appFolder, shipped } from './shippedCatalogue.ts';

const six = ['depth', 'eccentricTempo', 'pauses', 'barPath', 'headPosition', 'spinePosition'];
const judgedBySix = shipped.exercises.filter((exercise) => exercise.criteria.length === six.length);

describe('the exercise library', () => {
  it('holds the lifts of the demo', () => {
    const ids = shipped.exercises.map((exercise) => exercise.id);
    expect(ids).toEqual(expect.arrayContaining(['back-squat', 'romanian-deadlift', 'overhead-press']));
  });

  it('has a pattern file for every movement family', () => {
    const folder = path.join(appFolder, 'seeds/exercises');
    const files = readdirSync(folder).map((name) =>
      v.parse(exerciseFileSchema, JSON.parse(readFileSync(path.join(folder, name), 'utf8'))),
    );
    const patterns = files.map((file) => file.pattern);
    expect(new Set(patterns).size).toBe(patterns.length);
    const families = ['squat', 'hinge', 'lunge', 'horizontal press', 'vertical press', 'horizontal row'];
    const others = [
      'vertical pull',
      'curl',
      'elbow extension',
      'knee extension',
      'knee flexion',
      'calf raise',
      'trunk',
      'hold',
    ];
    expect(patterns).toEqual(expect.arrayContaining([...families, ...others]));
  });

  it.each(shipped.exercises)('$id offers at least four faults for each of its criteria', (exercise) => {
    for (const { id } of exercise.criteria) {
      expect(faultsFor(exercise, id).length, id).toBeGreaterThanOrEqual(4);
    }
  });

  it('judges most lifts by all six criteria', () => {
    expect(judgedBySix.length).toBeGreaterThanOrEqual(60);
    for (const exercise of judgedBySix) expect(exercise.criteria.map((criterion) => criterion.id)).toEqual(six);
  });
});

// The bounds follow from the grading rule of rubric 1 by hand, for a flag on every rep and all else clean
// (score = 0.75 × mean + 0.25 × lowest); what the letters ought to be is common practice, no source.
describe('the shares keep the calibration of the grades', () => {
  const share = (exercise: (typeof shipped.exercises)[number], id: string) =>
    exercise.criteria.find((criterion) => criterion.id === id)?.share ?? Number.NaN;

  it.each(judgedBySix)('$id: every rep well short of depth (correct) is a C', (exercise) => {
    // 85 − 45 × depth lies in [73, 77)
    expect(share(exercise, 'depth')).toBeGreaterThan(0.178);
    expect(share(exercise, 'depth')).toBeLessThanOrEqual(0.267);
  });

  it.each(judgedBySix)('$id: a head preference on every rep is still an A+', (exercise) => {
    // 98 − 6 × head is at least 97
    expect(share(exercise, 'headPosition')).toBeLessThanOrEqual(0.166);
  });

  it.each(judgedBySix)('$id: quick eccentrics (adjust) and no pause stretched (prefer) are an A-', (exercise) => {
    // 95 − 15 × eccentric − 6 × pauses lies in [90, 93)
    const cost = 15 * share(exercise, 'eccentricTempo') + 6 * share(exercise, 'pauses');
    expect(cost).toBeGreaterThan(2);
    expect(cost).toBeLessThanOrEqual(5);
  });

  it('gives the back squat the shares that the grades were calibrated with', () => {
    const squat = shipped.exercises.find((exercise) => exercise.id === 'back-squat');
    expect(squat?.criteria.map((criterion) => criterion.share)).toEqual([0.25, 0.2, 0.1, 0.2, 0.1, 0.15]);
  });
});
