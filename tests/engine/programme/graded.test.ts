import { describe, expect, it } from 'vitest';
import { findExercise } from '../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import type { PlannedSet } from '../../../engine/review/plan.ts';
import type { Entry } from '../../../engine/review/review.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { reps } from '../reviews.ts';
import { planned, sessionOf, sets } from './sessions.ts';

const catalogue = shippedUnder(3);

/** An entry without a fault: one clip, everything looked at. */
function clean(exercise: string, own: readonly PlannedSet[]): Entry {
  const criteria = findExercise(catalogue, exercise)?.criteria ?? [];
  const clip = { id: `${exercise}-clip`, name: 'Set 1', view: null, realTimeFactor: 1, reps: reps(5) };
  const ticks = criteria.map(({ id }) => ({ clip: clip.id, criterion: id, reps: 'set' as const }));
  return planned(exercise, own, { clips: [clip], ticks });
}

const markOf = (...entries: readonly Entry[]): string => {
  const { state } = gradeSession(sessionOf({}, ...entries), catalogue);
  return state.kind === 'none' ? '' : state.mark;
};

describe('clean technique under version 3', () => {
  it('with twenty hard sets for the chest is no A+', () => {
    const chest = ['bench-press', 'incline-dumbbell-press', 'dip', 'dumbbell-fly'];
    expect(markOf(...chest.map((id) => clean(id, sets(5, 10))))).not.toBe('A+');
    expect(markOf(...chest.slice(0, 2).map((id) => clean(id, sets(2, 10))))).toBe('A+');
  });

  it('with a plan that a coach would leave alone is A+', () => {
    const days: readonly (readonly Entry[])[] = [
      [clean('front-squat', sets(3, 6)), clean('romanian-deadlift', sets(3, 8))],
      [clean('bench-press', sets(3, 6)), clean('overhead-press', sets(3, 8)), clean('pull-up', sets(3, 8))],
      [
        clean('back-extension', [
          { reps: 10, loadKg: 20 },
          { reps: 15, loadKg: 12 },
          { reps: 20, loadKg: 0 },
        ]),
      ],
      [clean('jump-and-lower-pull-up', sets(3, 4, { tempo: '5-1-X-0' }))],
      [clean('romanian-deadlift', sets(3, 10)), clean('kneeling-hamstring-lowering', sets(3, 4))],
    ];
    for (const day of days) {
      const { findings } = gradeSession(sessionOf({}, ...day), catalogue);
      expect([findings.map(({ kind }) => kind), markOf(...day)]).toEqual([[], 'A+']);
    }
  });
});
