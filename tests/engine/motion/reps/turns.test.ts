import { describe, expect, it } from 'vitest';
import { countBounces, furthestBack } from '../../../../engine/motion/reps/turns.ts';
import { evenTimes, type Lift, liftOf, type Way } from './lifts.ts';
import { pathOfLift, repsOfLift } from './readReps.ts';

const down: Way[] = [
  { toM: 0, takesS: 1 },
  { toM: -0.6, takesS: 1.5 },
];
const after: Way = { toM: 0, takesS: 1 };

function turnsOf(lift: Lift, noiseM = 0) {
  const seen = { timesS: evenTimes(lift.endS, 30), noiseM };
  const { up } = pathOfLift(lift, seen);
  const [rep] = repsOfLift(lift, seen);
  if (!rep) throw new Error('no rep was read');
  const { eccentric, concentric } = rep;
  return {
    bounces: countBounces(up, {
      fromS: eccentric.startS,
      toS: concentric.endS,
      range: concentric.range,
      towardStretched: -1,
      noise: noiseM,
    }),
    backM: furthestBack(up, { fromS: concentric.startS, toS: concentric.endS, sense: 1 }),
  };
}

describe('turning at the stretched end', () => {
  it('once counts once, and nothing goes back', () => {
    const { bounces, backM } = turnsOf(liftOf(0, [...down, { toM: 0, takesS: 1 }, after]));
    expect(bounces).toBe(1);
    expect(backM).toBeLessThan(0.001);
  });

  it('once with a rest there counts once, noise or not', () => {
    const lift = liftOf(0, [...down, { toM: -0.6, takesS: 1 }, { toM: 0, takesS: 1 }, after]);
    expect(turnsOf(lift).bounces).toBe(1);
    expect(turnsOf(lift, 0.002).bounces).toBe(1);
  });

  it('twice counts twice: up 3 cm, down again, and up', () => {
    const lift = liftOf(0, [
      ...down,
      { toM: -0.57, takesS: 0.35 },
      { toM: -0.6, takesS: 0.35 },
      { toM: 0, takesS: 1 },
      after,
    ]);
    expect(turnsOf(lift).bounces).toBe(2);
    expect(turnsOf(lift, 0.001).bounces).toBe(2);
  });

  it('three times counts three times', () => {
    const bob: Way[] = [
      { toM: -0.57, takesS: 0.35 },
      { toM: -0.6, takesS: 0.35 },
    ];
    expect(turnsOf(liftOf(0, [...down, ...bob, ...bob, { toM: 0, takesS: 1 }, after])).bounces).toBe(3);
  });

  it('does not count sinking back far from the end', () => {
    const lift = liftOf(0, [
      ...down,
      { toM: -0.25, takesS: 0.8 },
      { toM: -0.28, takesS: 0.4 },
      { toM: 0, takesS: 0.8 },
      after,
    ]);
    expect(turnsOf(lift).bounces).toBe(1);
  });
});

describe('sinking back on the way up', () => {
  it('of 25 mm is measured to 3 mm', () => {
    const lift = liftOf(0, [
      ...down,
      { toM: -0.25, takesS: 0.8 },
      { toM: -0.275, takesS: 0.5 },
      { toM: 0, takesS: 0.8 },
      after,
    ]);
    expect(Math.abs(turnsOf(lift).backM - 0.025)).toBeLessThan(0.003);
    expect(Math.abs(turnsOf(lift, 0.0003).backM - 0.025)).toBeLessThan(0.003);
  });
});
