import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { faultsFor } from '../../engine/exercises/catalogue.ts';
import { diffRubrics } from '../../engine/rubric/diffRubrics.ts';
import { parseRubric } from '../../engine/rubric/rubric.ts';
import { appFolder, shipped, shippedUnder } from './shippedCatalogue.ts';

const second = shippedUnder(2);
const further = ['shortRange', 'control', 'bracing', 'symmetry', 'gaze'];

describe('the second version of the rubric', () => {
  it('has the same arithmetic, five criteria more, and new words only where they took something over', () => {
    const places = diffRubrics(shipped.rubric, second.rubric).map(({ path }) => path.split('.').slice(0, 2).join('.'));
    const reworded = ['criteria.depth', 'criteria.headPosition'];
    expect(new Set(places)).toEqual(new Set(['version', ...reworded, ...further.map((id) => `criteria.${id}`)]));
  });

  it('has a written anchor for every severity of every criterion, none said twice', () => {
    const parsed = parseRubric(JSON.parse(readFileSync(path.join(appFolder, 'seeds/rubric/v2.json'), 'utf8')));
    const anchors = parsed.ok ? parsed.rubric.criteria.flatMap(({ anchors: written }) => Object.values(written)) : [];
    expect(anchors).toHaveLength(55);
    expect(new Set(anchors).size).toBe(55);
    expect(anchors.every((anchor) => anchor.length > 30 && anchor.endsWith('.'))).toBe(true);
  });

  it('says what each further criterion was part of', () => {
    const partOf = Object.fromEntries(
      second.rubric.criteria.flatMap((one) => (one.partOf ? [[one.id, one.partOf]] : [])),
    );
    expect(partOf).toEqual({
      shortRange: 'depth',
      control: 'barPath',
      bracing: 'spinePosition',
      symmetry: 'barPath',
      gaze: 'headPosition',
    });
  });

  it('uses each further criterion in a good number of lifts', () => {
    for (const id of further) {
      const judging = second.exercises.filter(({ criteria }) => criteria.some((criterion) => criterion.id === id));
      expect(judging.length, id).toBeGreaterThanOrEqual(12);
    }
  });

  it('knows every criterion that the library names, and the next version every narrower one', () => {
    const known = new Set(shippedUnder(3).rubric.criteria.map((criterion) => criterion.id));
    const named = second.exercises.flatMap(({ alsoJudged = [], faults }) => [
      ...alsoJudged.map((one) => one.id),
      ...faults.flatMap((fault) => fault.narrower ?? []),
    ]);
    expect(named.filter((id) => !known.has(id))).toEqual([]);
  });

  it.each(second.exercises)('$id offers at least four faults for each of its criteria', (exercise) => {
    for (const { id } of exercise.criteria) {
      expect(faultsFor(exercise, id).length, id).toBeGreaterThanOrEqual(4);
    }
  });

  it.each(second.exercises)('$id can be judged by each of its criteria from some view', (exercise) => {
    const seen = new Set(Object.values(exercise.judgedFrom).flat());
    for (const { id, share } of exercise.criteria) {
      expect([...seen], id).toContain(id);
      expect(share, id).toBeGreaterThanOrEqual(0.025);
    }
  });

  it('judges sides from where they are seen, never from the side', () => {
    const aside = second.exercises.filter(({ judgedFrom }) => judgedFrom.side?.includes('symmetry'));
    expect(aside).toEqual([]);
  });
});
