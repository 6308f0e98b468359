import { describe, expect, it } from 'vitest';
import { withManualEdges } from '../../../../engine/motion/reps/manualEdges.ts';
import { spanOf } from '../../../../engine/motion/reps/phases.ts';
import { evenTimes, liftOf, liftOfSet } from './lifts.ts';
import { foundIn, pathOfLift, press, squat } from './readReps.ts';

// Rep 1 begins at 1 s, rep 2 at 5.5 s, rep 3 at 10 s; each 2 s down, 0.5 s, 1 s up, 1 s.
const lift = liftOfSet({
  reps: [1, 2, 3].map(() => ({ firstS: 2, pauseS: 0.5, secondS: 1, restS: 1 })),
  towards: -1,
});
const curve = pathOfLift(lift, { timesS: evenTimes(lift.endS, 30) }).up;
const measured = foundIn(curve).counted;

describe('edges that a person set', () => {
  const reps = withManualEdges(measured, [{ startS: 5.2, stretchedEndS: 7.7, endS: 9.3 }], { curve, exercise: squat });

  it('win over the measured ones of the rep they lie in', () => {
    const [, second] = reps;
    expect(second?.moves.eccentric?.startS).toBe(5.2);
    expect(second?.moves.eccentric?.endS).toBe(7.7);
    expect(second?.moves.concentric.endS).toBe(9.3);
    expect(second?.manualEdges.toSorted()).toEqual(['end', 'start', 'stretchedEnd']);
  });

  it('leave the other reps alone', () => {
    expect(reps).toHaveLength(3);
    expect(reps[0]).toMatchObject({ moves: measured[0]?.moves, manualEdges: [] });
    expect(reps[2]).toMatchObject({ moves: measured[2]?.moves, manualEdges: [] });
  });

  it('may be some only', () => {
    const [first] = withManualEdges(measured, [{ endS: 4.2 }], { curve, exercise: squat });
    expect(first?.manualEdges).toEqual(['end']);
    expect(first?.moves.concentric.endS).toBe(4.2);
    expect(first?.moves.concentric.startS).toBeCloseTo(3.5, 1);
    expect(first?.moves.eccentric?.startS).toBeCloseTo(1, 1);
  });

  it('never turn a phase round', () => {
    const [first] = withManualEdges(measured, [{ stretchedEndS: 3.9 }], { curve, exercise: squat });
    expect(first?.moves.concentric.startS).toBe(3.9);
    expect(first?.moves.concentric.endS).toBeGreaterThanOrEqual(3.9);
  });

  it('set the start of the concentric where the exercise begins with it', () => {
    const up = liftOfSet({ reps: [1, 2].map(() => ({ firstS: 1, pauseS: 0.5, secondS: 2, restS: 1 })), towards: 1 });
    const pressed = pathOfLift(up, { timesS: evenTimes(up.endS, 30) }).up;
    const [first] = withManualEdges(foundIn(pressed, press).counted, [{ startS: 0.8, endS: 4.8 }], {
      curve: pressed,
      exercise: press,
    });
    expect(first?.moves.concentric.startS).toBe(0.8);
    expect(first?.moves.eccentric?.endS).toBe(4.8);
  });
});

describe('a rep that a person set where none was measured', () => {
  // A short partial rep after three whole ones, which is not counted by itself.
  const partial = liftOf(0, [
    { toM: 0, takesS: 1 },
    ...[1, 2].flatMap(() => [
      { toM: -0.6, takesS: 2 },
      { toM: 0, takesS: 1 },
      { toM: 0, takesS: 1 },
    ]),
    { toM: -0.15, takesS: 1 },
    { toM: 0, takesS: 0.8 },
    { toM: 0, takesS: 1 },
  ]);
  const partialCurve = pathOfLift(partial, { timesS: evenTimes(partial.endS, 30) }).up;
  const whole = foundIn(partialCurve).counted;

  it('is a rep of its own, with the turn between its edges', () => {
    expect(whole).toHaveLength(2);
    const reps = withManualEdges(whole, [{ startS: 9, endS: 10.8 }], { curve: partialCurve, exercise: squat });
    expect(reps).toHaveLength(3);
    const own = reps[2];
    expect(own && spanOf(own.moves)).toEqual({ startS: 9, endS: 10.8 });
    expect(own?.moves.eccentric?.range).toBeCloseTo(0.15, 2);
    expect(own?.moves.eccentric?.endS).toBeCloseTo(10, 1);
    expect(own?.manualEdges.toSorted()).toEqual(['end', 'start']);
  });

  it('is none where the load does not go there and back', () => {
    const carried = liftOf(0, [
      { toM: 0, takesS: 1 },
      { toM: 0.8, takesS: 3 },
      { toM: 0.8, takesS: 1 },
    ]);
    const up = pathOfLift(carried, { timesS: evenTimes(carried.endS, 30) }).up;
    expect(withManualEdges([], [{ startS: 1.5, endS: 3.5 }], { curve: up, exercise: squat })).toEqual([]);
  });

  it('is none with one end only', () => {
    expect(withManualEdges(whole, [{ startS: 9 }], { curve: partialCurve, exercise: squat })).toHaveLength(2);
  });

  it('comes in the order of time', () => {
    const reps = withManualEdges(whole.slice(1), [{ startS: 1, endS: 4 }], { curve: partialCurve, exercise: squat });
    expect(reps.map(({ moves }) => Math.round(spanOf(moves).startS))).toEqual([1, 5]);
  });
});
