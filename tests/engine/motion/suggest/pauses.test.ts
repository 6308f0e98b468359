import { describe, expect, it } from 'vitest';
import { equalSets } from '../../../../engine/review/plan.ts';
import { pausesStretched, pm, rep, shippedExercise, timed, toMend } from './sets.ts';

const goblet = shippedExercise('goblet-squat');

describe('the pause stretched', () => {
  it('is missing where the exercise asks for half a second', () => {
    expect(toMend(pausesStretched(0, 0.6), { exercise: goblet })).toEqual([
      {
        id: 'pauses.longPauseMissing',
        criterion: 'pauses',
        fault: 'noLongPause',
        severity: 'prefer',
        reps: [1],
        atS: 12.75,
        measure: { name: 'pause, stretched', value: 0, plusMinus: 0.1, unit: 's' },
        sentence: 'Rep 1 pauses for 0.0 s ± 0.1 s at the bottom; the target is 0.5 to 1.5 s.',
      },
    ]);
    expect(toMend(pausesStretched(0, 0.6))).toEqual([]);
  });

  it('is asked for in the hang after a jump and a slow way down', () => {
    const exercise = shippedExercise('jump-and-lower-pull-up');
    expect(toMend(pausesStretched(0), { exercise })).toMatchObject([{ fault: 'noLongPause', severity: 'adjust' }]);
  });

  it('is the fault of the whole exercise where the pause is its point', () => {
    const exercise = shippedExercise('pause-squat');
    expect(toMend(pausesStretched(0.2), { exercise })).toMatchObject([{ fault: 'noLongPause', severity: 'correct' }]);
  });

  it('may last a second longer than asked', () => {
    expect(toMend(pausesStretched(1.9))).toEqual([]);
    expect(toMend(pausesStretched(3))).toMatchObject([
      { id: 'pauses.longPauseTooLong', fault: null, severity: 'prefer' },
    ]);
  });

  it('shrinks from what was asked, whatever was more', () => {
    const shrinks = toMend(pausesStretched(1.4, 1.2, 0.6), { exercise: goblet });
    expect(shrinks).toMatchObject([{ id: 'pauses.longPauseShrinks', fault: 'longPauseShrinks', reps: [3] }]);
    expect(toMend(pausesStretched(2.4, 1.9, 1.4), { exercise: goblet })).toEqual([]);
  });

  it('is named by where the stretched end is', () => {
    const exercise = shippedExercise('pulldown');
    expect(toMend(pausesStretched(0), { exercise })[0]?.sentence).toMatch(/at the top; the target is 0\.5 to 2 s/);
    const level = shippedExercise('seated-cable-row');
    expect(toMend(pausesStretched(0), { exercise: level })[0]?.sentence).toMatch(/at the stretched end/);
  });
});

describe('rests between reps are rests at the end where a rep begins', () => {
  it.each([
    ['back-squat', 'pauseShortened', 'longRestsBetweenReps'],
    ['back-squat', 'pauseStretched', null],
    ['pull-up', 'pauseStretched', 'longRestsBetweenReps'],
    ['pull-up', 'pauseShortened', null],
    // The hinge's fault speaks of the top, the deadlift rests on the floor.
    ['deadlift', 'pauseStretched', null],
    ['lying-triceps-extension', 'pauseShortened', null],
  ] as const)('%s, %s', (id, pause, fault) => {
    const exercise = shippedExercise(id);
    expect(toMend([timed(1, { [pause]: pm(4, 0.1) })], { exercise })).toMatchObject([{ fault }]);
  });
});

describe('the pause shortened', () => {
  it.each([
    ['hip-thrust', 'noShortPause'],
    ['anti-rotation-press', 'noHold'],
    ['jump-and-lower-pull-up', undefined],
    ['leg-extension', 'noFinishBetweenReps'],
    ['back-squat', undefined],
  ])('is wanted in %s: %s', (id, fault) => {
    const reps = [timed(1, { pauseShortened: pm(0, 0.1) })];
    expect(toMend(reps, { exercise: shippedExercise(id) })[0]?.fault).toBe(fault);
  });

  it('may be missing after the last rep', () => {
    const reps = [timed(1, { pauseShortened: pm(1.5, 0.1) }), timed(2, { pauseShortened: null })];
    expect(toMend(reps, { exercise: shippedExercise('hip-thrust') })).toEqual([]);
  });
});

describe('rebounds', () => {
  it.each([
    [1, []],
    [2, [{ fault: 'reboundsAtLongEnd', severity: 'adjust', sentence: expect.stringMatching(/turns round twice/) }]],
    [3, [{ fault: 'reboundsAtLongEnd', sentence: expect.stringMatching(/turns round 3 times/) }]],
  ])('a load that turns round %d times', (bounces, expected) => {
    expect(toMend([rep(1, { bounces })])).toMatchObject(expected);
  });
});

describe('a hold', () => {
  const exercise = shippedExercise('front-plank');

  it('is judged by its length alone: 20 to 60 s', () => {
    expect(toMend([timed(1, { pauseStretched: pm(12, 0.1) })], { exercise })).toMatchObject([
      {
        id: 'pauses.holdTooShort',
        fault: 'endsEarly',
        severity: 'adjust',
        sentence: 'Rep 1 is held for 12.0 s ± 0.1 s; the target is 20 to 60 s.',
      },
    ]);
    const held = rep(1, {
      durationsS: {
        eccentric: pm(1, 0.1),
        pauseStretched: pm(30, 0.1),
        concentric: pm(9, 0.1),
        pauseShortened: pm(9, 0.1),
      },
      romM: pm(0.2, 0.01),
      bounces: 4,
      downOnWayUpM: pm(0.1, 0.01),
    });
    expect(toMend([held], { exercise })).toEqual([]);
  });

  it('is too long, for the plan, from a quarter over it', () => {
    const plan = equalSets({ sets: 1, reps: 1, tempo: '0-40-0-0' });
    expect(toMend([timed(1, { pauseStretched: pm(49, 0.1) })], { exercise, plan })).toEqual([]);
    expect(toMend([timed(1, { pauseStretched: pm(52, 0.1) })], { exercise, plan })).toMatchObject([
      { id: 'pauses.holdTooLong', fault: null, severity: 'prefer' },
    ]);
  });
});
