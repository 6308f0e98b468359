import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EdgedRep, withManualEdges } from '../../../../engine/motion/reps/manualEdges.ts';
import { inOrder } from '../../../../engine/motion/reps/phases.ts';
import type { ManualRep } from '../../../../engine/motion/reps/setEdges.ts';
import { evenTimes, liftOfSet } from './lifts.ts';
import { foundIn, pathOfLift, press, squat } from './readReps.ts';

// Rep 1 begins at 1 s, rep 2 at 5.5 s, rep 3 at 10 s; each 2 s one way, 0.5 s there, 1 s back, 1 s.
const plan = { firstS: 2, pauseS: 0.5, secondS: 1, restS: 1 };
const setOf = (exercise: typeof squat | typeof press) => {
  const lift = liftOfSet({ reps: [plan, plan, plan], towards: exercise === squat ? -1 : 1 });
  const curve = pathOfLift(lift, { timesS: evenTimes(lift.endS, 30) }).up;
  return { curve, exercise, measured: foundIn(curve, exercise).counted };
};
const squats = setOf(squat);
const presses = setOf(press);

const edged = (set: ReturnType<typeof setOf>, manual: readonly ManualRep[]) =>
  withManualEdges(set.measured, manual, set);

describe('edges that a person set against the measured ones', () => {
  it('before the measured way up leave it all the time up to the end that was set', () => {
    const [first] = edged(squats, [{ startS: 0.9, stretchedEndS: 2.4, endS: 3.3 }]);
    expect(first?.moves.eccentric).toMatchObject({ startS: 0.9, endS: 2.4 });
    expect(first?.moves.concentric).toMatchObject({ startS: 2.4, endS: 3.3 });
  });

  it('after the measured end take the end with them', () => {
    const [first] = edged(squats, [{ startS: 1, stretchedEndS: 4.8 }]);
    expect(first?.moves.eccentric).toMatchObject({ startS: 1, endS: 4.8 });
    expect(first?.moves.concentric.startS).toBeGreaterThanOrEqual(4.8);
    expect(first?.moves.concentric.endS).toBeGreaterThanOrEqual(first?.moves.concentric.startS ?? 99);
  });

  it('read the way up again where the stretched end is set into it', () => {
    const [first] = edged(squats, [{ stretchedEndS: 3.8 }]);
    expect(first?.moves.eccentric?.endS).toBe(3.8);
    expect(first?.moves.concentric.startS).toBeGreaterThanOrEqual(3.8);
    expect(first?.moves.concentric.startS).toBeLessThan(4);
    expect(first?.moves.concentric.endS).toBeCloseTo(4.5, 1);
  });

  it('move the measured start of the next rep', () => {
    const [first, second] = edged(squats, [{ startS: 1, endS: 6 }]);
    expect(first?.span).toEqual({ startS: 1, endS: 6 });
    expect(second?.span.startS).toBe(6);
    expect(second?.moves.concentric.endS).toBeCloseTo(9, 1);
  });

  it('put an end to a measured rep that lies wholly within them', () => {
    const reps = edged(squats, [{ startS: 0.8, endS: 9.3 }]);
    expect(reps.map(({ span }) => Math.round(span.startS * 10) / 10)).toEqual([0.8, 10]);
  });

  it('keep the stretched end apart from the end of a rep that begins with the way up', () => {
    const [first] = edged(presses, [{ startS: 1, stretchedEndS: 4.3, endS: 5 }]);
    expect(first?.moves.eccentric?.endS).toBe(4.3);
    expect(first?.span).toEqual({ startS: 1, endS: 5 });
    expect(first?.moves.concentric.endS).toBeCloseTo(3, 1);
  });

  it('are none where they are not in order', () => {
    const [first] = edged(squats, [{ startS: 3, stretchedEndS: 2, endS: 4 }]);
    expect(first?.manualEdges).toEqual([]);
    expect(first?.span.startS).toBeCloseTo(1, 1);
  });
});

const second = fc.double({ min: 0, max: 14.4, noNaN: true });
/** Some of three edges in order, at least 50 ms apart. */
const someEdges = fc
  .tuple(second, second, second, fc.subarray(['startS', 'stretchedEndS', 'endS'] as const, { minLength: 1 }))
  .map(([one, two, three, set]) => {
    const [startS = 0, stretchedEndS = 0, endS = 0] = [one, two, three].sort((a, b) => a - b);
    const all = { startS, stretchedEndS: stretchedEndS + 0.05, endS: endS + 0.1 };
    return Object.fromEntries(set.map((edge) => [edge, all[edge]])) satisfies ManualRep;
  });

function edgesInOrder({ moves, span }: EdgedRep): number[] {
  const [first, next] = inOrder(moves);
  return [span.startS, first.startS, first.endS, ...(next ? [next.startS, next.endS] : []), span.endS];
}

describe.each([
  ['squats', squats],
  ['presses', presses],
])('any edges set in three %s', (_, set) => {
  it('stay where they were set, and all edges stay in order', () => {
    fc.assert(
      fc.property(someEdges, (manual: ManualRep) => {
        const reps = edged(set, [manual]);
        for (const rep of reps) {
          const edges = edgesInOrder(rep);
          expect(edges).toEqual(edges.toSorted((a, b) => a - b));
        }
        const [own, ...others] = reps.filter(({ manualEdges }) => manualEdges.length > 0);
        expect(others).toEqual([]);
        if (!own) return;
        if (manual.startS !== undefined) expect(own.span.startS).toBe(manual.startS);
        if (manual.endS !== undefined) expect(own.span.endS).toBe(manual.endS);
        if (manual.stretchedEndS !== undefined) expect(own.moves.eccentric?.endS).toBe(manual.stretchedEndS);
        reps.slice(1).forEach(({ span }, index) => {
          expect(span.startS).toBeGreaterThanOrEqual(reps[index]?.span.endS ?? 0);
        });
      }),
      { numRuns: 1500 },
    );
  });
});
