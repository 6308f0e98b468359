import { describe, expect, it } from 'vitest';
import { evenTimes, type Lift, liftOf, type Way } from './lifts.ts';
import { partsOf, press, repsOfLift, squat } from './readReps.ts';

const rep = (depthM: number): Way[] => [
  { toM: -depthM, takesS: 1.5 },
  { toM: -depthM, takesS: 0.3 },
  { toM: 0, takesS: 1 },
  { toM: 0, takesS: 0.8 },
];

const times = (lift: Lift) => evenTimes(lift.endS, 30);

describe('a walk-out and putting the bar back', () => {
  const bob: Way[] = [
    { toM: 0.05, takesS: 0.4 },
    { toM: 0, takesS: 0.4 },
  ];
  const lift = liftOf(0.03, [
    { toM: 0.03, takesS: 0.5 },
    { toM: 0.08, takesS: 0.6 },
    { toM: 0, takesS: 0.5 },
    ...bob,
    ...bob,
    { toM: 0, takesS: 1 },
    ...rep(0.55),
    ...rep(0.55),
    ...rep(0.53),
    ...bob,
    { toM: 0.08, takesS: 0.5 },
    { toM: 0.03, takesS: 0.6 },
    { toM: 0.03, takesS: 0.5 },
  ]);

  it('are no reps', () => {
    const reps = repsOfLift(lift, { timesS: times(lift) });
    expect(reps).toHaveLength(3);
    expect(reps[0]?.eccentric.startS).toBeCloseTo(4.2, 1);
    expect(reps[0]?.eccentric.range).toBeCloseTo(0.55, 2);
  });
});

describe('a set that begins and ends on the floor', () => {
  const fromFloor = (...ways: Way[]) =>
    liftOf(-0.9, [{ toM: -0.9, takesS: 1 }, ...ways, { toM: -0.9, takesS: 1.4 }, { toM: -0.9, takesS: 1 }]);

  it('has only the reps between when each goes down first', () => {
    const lift = fromFloor({ toM: 0, takesS: 1.6 }, { toM: 0, takesS: 0.8 }, ...rep(0.45), ...rep(0.45), ...rep(0.45));
    const reps = repsOfLift(lift, { timesS: times(lift) }, squat);
    expect(reps).toHaveLength(3);
    for (const one of reps) {
      expect(one.eccentric.range).toBeCloseTo(0.45, 2);
      expect(one.concentric.range).toBeCloseTo(0.45, 2);
      expect(partsOf(one).firstS).toBeCloseTo(1.5, 1);
      expect(partsOf(one).secondS).toBeCloseTo(1, 1);
    }
  });

  it('has only the reps between when the pull runs on into the first of them', () => {
    // Up from the floor and, without a stop at hanging height, on to the top of the first concentric.
    const lift = liftOf(-0.9, [
      { toM: -0.9, takesS: 1 },
      { toM: 0, takesS: 1.8 },
      { toM: 0, takesS: 0.3 },
      { toM: -0.45, takesS: 1.5 },
      { toM: -0.45, takesS: 0.3 },
      { toM: 0, takesS: 1 },
      { toM: 0, takesS: 0.3 },
      { toM: -0.45, takesS: 1.5 },
      { toM: -0.45, takesS: 0.3 },
      { toM: 0, takesS: 1 },
      { toM: 0, takesS: 0.3 },
      { toM: -0.9, takesS: 1.6 },
      { toM: -0.9, takesS: 1 },
    ]);
    const reps = repsOfLift(lift, { timesS: times(lift) }, press);
    expect(reps).toHaveLength(3);
    for (const one of reps) {
      expect(one.concentric.range).toBeLessThan(0.5);
      expect(one.eccentric.range).toBeLessThan(0.5);
    }
    const middle = reps[1];
    expect(middle && partsOf(middle).firstS).toBeCloseTo(1, 1);
    expect(middle && partsOf(middle).secondS).toBeCloseTo(1.5, 1);
  });
});

describe('a load that does not do reps', () => {
  it.each([
    ['rests', liftOf(0, [{ toM: 0, takesS: 8 }])],
    [
      'is carried up and stays',
      liftOf(0, [
        { toM: 0, takesS: 2 },
        { toM: 0.6, takesS: 2 },
        { toM: 0.6, takesS: 4 },
      ]),
    ],
  ])('and %s has none', (_, lift) => {
    expect(repsOfLift(lift, { timesS: times(lift), noiseM: 0.001 })).toEqual([]);
  });

  it('has none in a hold, however much it moves', () => {
    const lift = liftOf(0, [...rep(0.5), ...rep(0.5)]);
    expect(repsOfLift(lift, { timesS: times(lift) }, { beginsWith: 'hold', lowerEnd: 'stretched' })).toEqual([]);
  });
});
