import { describe, expect, it } from 'vitest';
import { evenTimes, type Lift, liftOf, twoHumps } from './lifts.ts';
import { partsOf, repsOfLift } from './readReps.ts';

/** Two reps of 0.55 m, 2 s down, 0.3 s at the bottom; the second's way up is given. */
const withWayUp = (...up: Parameters<typeof liftOf>[1]): Lift =>
  liftOf(0, [
    { toM: 0, takesS: 1 },
    { toM: -0.55, takesS: 2 },
    { toM: -0.55, takesS: 0.3 },
    { toM: 0, takesS: 1 },
    { toM: 0, takesS: 0.8 },
    { toM: -0.55, takesS: 2 },
    { toM: -0.55, takesS: 0.3 },
    ...up,
    { toM: 0, takesS: 1 },
  ]);

describe('a sticking region, in which speed sinks to 15 % of its peak half-way up', () => {
  const lift = withWayUp({ toM: 0, takesS: 2.4, shape: twoHumps(0.15) });

  it.each([0, 0.0003])('is part of the way up and no pause, with places known to %f m', (noiseM) => {
    const reps = repsOfLift(lift, { timesS: evenTimes(lift.endS, 30), noiseM }).map(partsOf);
    expect(reps).toHaveLength(2);
    expect(reps[1]?.secondS).toBeCloseTo(2.4, 1);
    expect(reps[1]?.pauseS).toBeGreaterThan(0.2);
    expect(reps[1]?.pauseS).toBeLessThan(0.4);
  });
});

describe('a stop of 0.6 s half-way', () => {
  it('up belongs to the way up', () => {
    const lift = withWayUp({ toM: -0.28, takesS: 0.8 }, { toM: -0.28, takesS: 0.6 }, { toM: 0, takesS: 0.8 });
    const reps = repsOfLift(lift, { timesS: evenTimes(lift.endS, 30) }).map(partsOf);
    expect(reps).toHaveLength(2);
    expect(Math.abs((reps[1]?.secondS ?? 0) - 2.2)).toBeLessThan(0.05);
    expect(Math.abs((reps[1]?.pauseS ?? 0) - 0.3)).toBeLessThan(0.05);
  });

  it('down belongs to the way down', () => {
    const lift = liftOf(0, [
      { toM: 0, takesS: 1 },
      { toM: -0.3, takesS: 1 },
      { toM: -0.3, takesS: 0.6 },
      { toM: -0.6, takesS: 1 },
      { toM: 0, takesS: 1 },
      { toM: 0, takesS: 1 },
    ]);
    const reps = repsOfLift(lift, { timesS: evenTimes(lift.endS, 30) }).map(partsOf);
    expect(reps).toHaveLength(1);
    expect(Math.abs((reps[0]?.firstS ?? 0) - 2.6)).toBeLessThan(0.05);
    expect(reps[0]?.pauseS).toBeLessThan(0.1);
  });
});

describe('sinking 4 cm in the middle of the way up', () => {
  it('splits no rep', () => {
    const lift = withWayUp({ toM: -0.25, takesS: 0.8 }, { toM: -0.29, takesS: 0.4 }, { toM: 0, takesS: 0.8 });
    const reps = repsOfLift(lift, { timesS: evenTimes(lift.endS, 30) }).map(partsOf);
    expect(reps).toHaveLength(2);
    expect(Math.abs((reps[1]?.secondS ?? 0) - 2)).toBeLessThan(0.05);
  });
});
