import { describe, expect, it } from 'vitest';
import { joints, pm, ranges, rep, shippedExercise, toMend } from './sets.ts';

const deep = (index: number, value: number, outcome: 'reached' | 'tooClose' | 'short') =>
  rep(index, { joints: joints({ depthM: pm(value, 0.02), depthOutcome: outcome, depthFrom: 'joints' }) });

describe('depth', () => {
  it('is short where its outcome is, at the stretched end of the highest rep', () => {
    expect(toMend([deep(1, 0.04, 'short'), deep(2, 0.08, 'short'), deep(3, 0.01, 'tooClose')])).toEqual([
      {
        id: 'depth.short',
        criterion: 'depth',
        fault: 'shortOfDepth',
        severity: 'correct',
        reps: [1, 2],
        atS: 22.75,
        measure: { name: 'hip crease above the top of the knee', value: 0.08, plusMinus: 0.02, unit: 'm' },
        sentence:
          'Rep 2 turns round with the hip crease 8 cm ± 2 cm above the top of the knee; it should go at least level with it. Rep 1 shows it too.',
      },
    ]);
  });

  it('is a preference where little is missing', () => {
    const near = rep(1, { joints: joints({ depthM: pm(0.015, 0.005), depthOutcome: 'short' }) });
    expect(toMend([near])).toMatchObject([{ severity: 'prefer' }]);
  });

  it('is not judged by the hip crease where the rule speaks of something else', () => {
    expect(toMend([deep(1, 0.3, 'short')], { exercise: shippedExercise('deadlift') })).toEqual([]);
  });
});

describe('range', () => {
  it('varies where reps go less far than the longest by more than 6 % and what is unsure', () => {
    expect(toMend(ranges(0.55, 0.52, 0.55))).toEqual([]);
    expect(toMend(ranges(0.55, 0.47, 0.55))).toMatchObject([
      {
        id: 'depth.varies',
        fault: 'depthVaries',
        severity: 'adjust',
        reps: [2],
        sentence: 'Rep 2 moves over 47 cm ± 1 cm, rep 1 over 55 cm ± 1 cm; the reps of a set should go equally far.',
      },
    ]);
  });

  it('fades where the last rep goes less far than the first, and then is not also told to vary', () => {
    expect(toMend(ranges(0.55, 0.53, 0.48, 0.46))).toMatchObject([
      { id: 'depth.fades', fault: 'depthFades', reps: [3, 4], atS: 42.75 },
    ]);
    const exercise = shippedExercise('standing-curl');
    expect(toMend(ranges(0.55, 0.53, 0.46), { exercise })).toMatchObject([{ fault: 'rangeFades' }]);
  });

  it('of two reps varies and does not fade', () => {
    expect(toMend(ranges(0.55, 0.46)).map(({ id }) => id)).toEqual(['depth.varies']);
  });
});

describe('an end of the range', () => {
  const reaching = (...shorts: readonly number[]) =>
    shorts.map((short, place) => rep(place + 1, { reach: { stretched: pm(0.5, 0.01), shortened: pm(short, 0.01) } }));

  it('that is missed has the exercise’s own fault of that end', () => {
    const exercise = shippedExercise('bench-press');
    expect(toMend(reaching(0.5, 0.4, 0.5), { exercise })).toMatchObject([{ fault: 'softLockout', reps: [2] }]);
  });

  it('has no fault that speaks of going past it', () => {
    const exercise = shippedExercise('dumbbell-fly');
    const found = toMend(reaching(0.5, 0.5, 0.4), { exercise, view: 'front' });
    expect(found.map(({ fault }) => fault)).not.toContain('shortAtShortEnd');
    expect(found).toHaveLength(1);
  });
});
