import { describe, expect, it } from 'vitest';
import { twoHumps } from '../reps/lifts.ts';
import {
  faultlessSet,
  newestExercise,
  proposedOfBody,
  proposedOfLoad,
  proposedOfPoint,
  type SeenRep,
  toMendOf,
} from './seen.ts';

const seeds = Array.from({ length: 20 }, (_, index) => index + 1);
const squat = newestExercise('back-squat');
const bodySquat = newestExercise('bodyweight-squat');
const press = newestExercise('overhead-press');
const pullUp = newestExercise('pull-up');
const deadlift = newestExercise('deadlift');

const usual: SeenRep = { turnM: -0.6, finishM: 0, firstS: 2.5, pauseS: 0.5, secondS: 1.2, restS: 0.7 };
const pressed: SeenRep = { turnM: 0.6, finishM: 0, firstS: 1.2, pauseS: 0.5, secondS: 2.2, restS: 0.6 };

/** Share of some sets of which anything is to be mended. */
const shareMended = (proposed: readonly (readonly unknown[])[]): number =>
  proposed.filter((suggestions) => suggestions.length > 0).length / proposed.length;

describe('sets without a fault', () => {
  it.each([
    [30, 0.3],
    [30, 1],
    [30, 2],
    [15, 0.7],
    [60, 1],
  ])(
    'a barbell squat at %d frames a second with %d px of noise is mended in one set of ten at most',
    (framesPerSecond, noisePx) => {
      const proposed = seeds.map((seed) =>
        toMendOf(
          proposedOfLoad(faultlessSet(seed, { turnM: -0.6, firstS: 2.5, pauseS: 0.5 }), {
            ...{ exercise: squat, framesPerSecond, noisePx, seed },
            forwardM: (timeS) => 0.008 * Math.sin(timeS + seed),
          }),
        ),
      );
      expect(shareMended(proposed)).toBeLessThanOrEqual(0.1);
    },
  );

  it.each([30, 10])('nor is a squat read from the body at %d frames a second', (framesPerSecond) => {
    const proposed = seeds.slice(0, 10).map((seed) =>
      toMendOf(
        proposedOfBody(faultlessSet(seed, { turnM: -0.95, firstS: 3, pauseS: 1 }), {
          ...{ exercise: bodySquat, framesPerSecond, seed },
        }).proposed,
      ),
    );
    expect(shareMended(proposed)).toBeLessThanOrEqual(0.1);
  });
});

describe('where a rep stops short', () => {
  const three = (rep: SeenRep, change: Partial<SeenRep>) => [rep, rep, { ...rep, ...change }, rep];
  const found = (reps: readonly SeenRep[], exercise: typeof press) =>
    [proposedOfLoad, proposedOfPoint].map((proposedOf) =>
      toMendOf(proposedOf(reps, { exercise })).filter(({ criterion }) => ['depth', 'shortRange'].includes(criterion)),
    );

  it.each([
    ['a press below lockout', press, three(pressed, { turnM: 0.52 }), 'softLockout', 'top'],
    [
      'a press that comes down half-way',
      press,
      [pressed, { ...pressed, finishM: 0.09 }, pressed, pressed],
      'depthVaries',
      'bottom',
    ],
    ['a squat that isn’t as deep', squat, three(usual, { turnM: -0.5 }), 'depthVaries', 'bottom'],
    ['a pull-up with the chin below the bar', pullUp, three(pressed, { turnM: 0.5 }), 'shortOfTop', 'top'],
    [
      'a pull-up that begins with bent arms',
      pullUp,
      [pressed, { ...pressed, finishM: 0.1 }, pressed, pressed],
      'depthVaries',
      'bottom',
    ],
    ['a deadlift that isn’t stood up', deadlift, three(pressed, { turnM: 0.5 }), 'notStoodUp', 'top'],
  ] as const)('%s is told at that end, with a scale or without', (_, exercise, reps, fault, where) => {
    for (const suggestions of found(reps, exercise)) {
      expect(suggestions).toMatchObject([{ fault, reps: [3], message: { values: { where } } }]);
    }
  });

  it('a press whose last reps are short of lockout fades at the top, and not at the bottom', () => {
    const reps = [pressed, { ...pressed, turnM: 0.59 }, { ...pressed, turnM: 0.53 }, { ...pressed, turnM: 0.5 }];
    for (const suggestions of found(reps, press)) {
      expect(suggestions).toMatchObject([{ id: 'shortRange.finishFades', fault: 'finishFades', reps: [3, 4] }]);
    }
  });

  it('one rep deeper than all others makes no fault of theirs', () => {
    for (const suggestions of found([usual, { ...usual, turnM: -0.7 }, usual, usual], squat))
      expect(suggestions).toEqual([]);
  });

  it('is found on the body too, in any view', () => {
    for (const azimuthDeg of [90, 45, 135, -60]) {
      const reps = three({ ...usual, turnM: -1, firstS: 3, pauseS: 1 }, { turnM: -0.75 });
      const { measurement, proposed } = proposedOfBody(reps, { exercise: bodySquat, azimuthDeg });
      expect(measurement.reps).toHaveLength(4);
      expect(proposed).toContainEqual(expect.objectContaining({ fault: 'depthVaries', reps: [3] }));
    }
  });
});

describe('how a load is lowered', () => {
  const uneven = (suggestions: readonly { readonly id: string }[]) => suggestions.filter(({ id }) => /uneven/.test(id));

  it('smoothly never slows by anything, however slowly or shakily', () => {
    for (const seed of seeds.slice(0, 6)) {
      for (const firstS of [2.5, 4, 7]) {
        const reps = [usual, usual, usual].map((rep) => ({ ...rep, firstS }));
        expect(uneven(proposedOfLoad(reps, { exercise: squat, seed, noisePx: 2 }))).toEqual([]);
        expect(
          uneven(
            proposedOfBody(
              reps.map((rep) => ({ ...rep, turnM: -0.9 })),
              { exercise: bodySquat, seed },
            ).proposed,
          ),
        ).toEqual([]);
      }
    }
  });

  it('with a stop half-way slows, and is told so', () => {
    const reps = [usual, usual, { ...usual, firstShape: twoHumps(0.02) }];
    expect(uneven(proposedOfLoad(reps, { exercise: squat }))).toMatchObject([{ fault: 'unevenLowering', reps: [3] }]);
  });

  it('too quickly is told, by load and body', () => {
    const reps = [usual, usual, usual].map((rep) => ({ ...rep, firstS: 1 }));
    const quick = expect.objectContaining({ fault: 'quickLowering' });
    expect(proposedOfLoad(reps, { exercise: squat })).toContainEqual(quick);
    expect(
      proposedOfBody(
        reps.map((rep) => ({ ...rep, turnM: -0.9 })),
        { exercise: bodySquat },
      ).proposed,
    ).toContainEqual(quick);
  });
});

describe('a path that strays', () => {
  const reps = [usual, usual, usual];
  const astray = (m: number) => (timeS: number) => m * Math.sin((Math.PI * ((timeS - 1) % 4.9)) / 4.9) ** 2;

  it('is told beyond the tolerance, of a load seen square-on', () => {
    const found = proposedOfLoad(reps, { exercise: squat, forwardM: astray(0.09) });
    expect(found).toContainEqual(expect.objectContaining({ fault: 'barDriftsForward', reps: [1, 2, 3] }));
  });

  it('is never told of a body', () => {
    const { proposed } = proposedOfBody(
      reps.map((rep) => ({ ...rep, turnM: -0.9 })),
      { exercise: bodySquat },
    );
    expect(proposed.filter(({ criterion }) => criterion === 'barPath')).toEqual([]);
  });
});
