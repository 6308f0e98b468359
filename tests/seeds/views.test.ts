import { describe, expect, it } from 'vitest';
import { type Exercise, views } from '../../engine/exercises/exercise.ts';
import { viewJudges } from '../../engine/exercises/viewJudges.ts';
import { shippedUnder } from './shippedCatalogue.ts';

const { exercises } = shippedUnder(3);
const moving = exercises.filter(({ beginsWith }) => beginsWith !== 'hold');
const judges = ({ judgedFrom }: Exercise, view: (typeof views)[number], id: string) =>
  judgedFrom[view]?.includes(id) === true;

/**
 * Where a machine, a bench or the lifter's own trunk stands between camera and movement, common practice: nothing but the
 * set-up shows from there.
 */
const hidden: Readonly<Record<string, readonly string[]>> = {
  front: ['pulldown', 'seated-cable-row'],
  rear: [
    ...['preacher-curl', 'hammer-curl', 'incline-curl', 'cable-curl', 'triceps-pushdown', 'anti-rotation-press'],
    ...['hip-thrust', 'leg-extension', 'leg-curl', 'leg-press', 'front-plank'],
  ],
};

describe.each(views)('the %s view', (view) => {
  it('judges tempo and pauses of every exercise whose movement shows from there', () => {
    const without = moving.filter((exercise) =>
      exercise.criteria.some(({ id }) => ['eccentricTempo', 'pauses'].includes(id) && !judges(exercise, view, id)),
    );
    const known = hidden[view] ?? [];
    expect(without.map(({ id }) => id).sort()).toEqual(
      known.filter((id) => moving.some((exercise) => exercise.id === id)).sort(),
    );
  });

  it('splits an exercise’s criteria into what it can judge and what it can’t', () => {
    for (const exercise of exercises) {
      const { judged, not } = viewJudges(exercise, view);
      expect([...judged, ...not].sort()).toEqual(exercise.criteria.map(({ id }) => id).sort());
      expect(judged.every((id) => judges(exercise, view, id))).toBe(true);
    }
  });
});

describe('what a view must not claim', () => {
  it('three-quarter: the range, but no path to drift from', () => {
    for (const exercise of moving) {
      expect(judges(exercise, 'oblique', 'depth'), exercise.id).toBe(true);
      expect(judges(exercise, 'oblique', 'barPath'), exercise.id).toBe(false);
    }
  });

  it('the shortened end shows wherever the range does: from the side and three-quarter', () => {
    for (const exercise of moving.filter(({ criteria }) => criteria.some(({ id }) => id === 'shortRange'))) {
      expect(judges(exercise, 'oblique', 'shortRange'), exercise.id).toBe(true);
    }
  });

  it('left against right shows from the front or from behind, never from the side', () => {
    for (const exercise of exercises.filter(({ criteria }) => criteria.some(({ id }) => id === 'symmetry'))) {
      expect(judges(exercise, 'front', 'symmetry') || judges(exercise, 'rear', 'symmetry'), exercise.id).toBe(true);
      expect(judges(exercise, 'side', 'symmetry'), exercise.id).toBe(false);
    }
  });
});
