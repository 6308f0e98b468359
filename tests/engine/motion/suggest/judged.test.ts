import { describe, expect, it } from 'vitest';
import { suggest } from '../../../../engine/motion/suggest/suggest.ts';
import { sayMeasuring } from '../../../../engine/wording/sayMeasuring.ts';
import { eccentrics, joints, pm, rep, setOf, shipped, shippedExercise, toMend } from './sets.ts';

const everything = [1, 2, 3].map((index) =>
  rep(index, {
    durationsS: { eccentric: pm(0.9, 0.1), pauseStretched: pm(5, 0.1), concentric: null, pauseShortened: pm(5, 0.1) },
    driftForwardM: pm(0.3, 0.01),
    driftBackM: pm(0.3, 0.01),
    bounces: 2,
    downOnWayUpM: pm(0.1, 0.01),
    joints: joints({ depthM: pm(0.2, 0.02), depthOutcome: 'short', headTrunkDeg: pm(60, 10) }),
    romM: pm(index === 3 ? 0.3 : 0.5, 0.01),
  }),
);

describe('only what is judged is spoken of', () => {
  it('by the rubric', () => {
    expect(toMend(everything, { rubricCriteria: ['pauses'] }).every(({ criterion }) => criterion === 'pauses')).toBe(
      true,
    );
    expect(toMend(everything, { rubricCriteria: [] })).toEqual([]);
  });

  it('by the view; one that is not known rules nothing out', () => {
    const exercise = shippedExercise('back-squat');
    for (const view of ['front', 'rear', 'oblique'] as const) {
      const allowed = exercise.judgedFrom[view] ?? [];
      for (const { criterion } of toMend(everything, { view })) expect(allowed).toContain(criterion);
    }
    const criteria = new Set(toMend(everything, { view: null }).map(({ criterion }) => criterion));
    expect([...criteria].sort()).toEqual(['barPath', 'depth', 'eccentricTempo', 'headPosition', 'pauses']);
  });
});

it('in every exercise that ships, each suggestion is in a judged criterion and its fault is one of the exercise', () => {
  for (const exercise of shipped.exercises) {
    const suggestions = suggest({
      measurement: setOf([...everything, ...eccentrics(9).map((one) => ({ ...one, index: 4 }))]),
      exercise,
      goal: 'growth',
      plan: null,
      rubricCriteria: shipped.rubric.criteria.map(({ id }) => id),
      view: exercise.bestView,
    });
    expect(new Set(suggestions.map(({ id }) => id)).size).toBe(suggestions.length);
    for (const { criterion, fault, severity, message } of suggestions) {
      expect(exercise.judgedFrom[exercise.bestView]).toContain(criterion);
      if (fault !== null) expect(exercise.faults).toContainEqual(expect.objectContaining({ id: fault, criterion }));
      expect(severity).not.toBe('stop');
      expect(sayMeasuring(message, 'en')).toMatch(/^(?:Rep|In rep) \d.* ± .*\.$|turns round|^Every rep/);
      expect(sayMeasuring(message, 'de')).toMatch(/^Wiederholung \d: .* ± .*\.$|Umkehr|^Jede Wiederholung/);
    }
  }
});

it('a fault of resting between reps is named only where it speaks of the end at which the rest was', () => {
  const top = /\btop\b|short(?:ened)? end/;
  for (const exercise of shipped.exercises) {
    for (const end of ['pauseStretched', 'pauseShortened'] as const) {
      const rested = rep(1, {
        durationsS: {
          eccentric: null,
          pauseStretched: null,
          concentric: null,
          pauseShortened: null,
          [end]: pm(50, 0.1),
        },
      });
      for (const { fault } of toMend([rested], { exercise, view: null })) {
        const named = exercise.faults.find(({ id }) => id === fault && id === 'longRestsBetweenReps');
        if (named && named.id === 'longRestsBetweenReps' && !/between steps/.test(named.seen)) {
          expect([exercise.id, top.test(named.seen)]).toEqual([exercise.id, end === 'pauseShortened']);
        }
      }
    }
  }
});
