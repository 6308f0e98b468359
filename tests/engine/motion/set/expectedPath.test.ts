import { describe, expect, it } from 'vitest';
import type { Exercise } from '../../../../engine/exercises/exercise.ts';
import { evenTimes, liftOfSet } from '../reps/lifts.ts';
import { measured } from './seenSet.ts';

const plan = { firstS: 2, pauseS: 0.3, secondS: 1, restS: 1, rangeM: 0.6 };
const lift = liftOfSet({ reps: [plan, plan, plan], towards: -1 });
const timesS = evenTimes(lift.endS, 30);
const seen = { timesS, heightM: lift.heightAt };

const along = (path: Exercise['targets']['path'], change: Partial<Exercise> = {}): Partial<Exercise> => ({
  ...change,
  targets: {
    tempo: {
      growth: { eccentricS: [2, 3], pauseStretchedS: [0, 1], concentricS: null, pauseShortenedS: [0, 1] },
      strength: { eccentricS: [2, 3], pauseStretchedS: [0, 1], concentricS: null, pauseShortenedS: [0, 1] },
      skill: { eccentricS: [2, 3], pauseStretchedS: [0, 1], concentricS: null, pauseShortenedS: [0, 1] },
    },
    depth: 'crease below knee top',
    path,
    headDeg: 20,
    spine: 'shape of the set-up',
  },
});

/** Of a straight line that leans 7°, sideways by upward. */
const tan7 = Math.tan((7 * Math.PI) / 180);

describe('an upright path', () => {
  /** Forward as the height goes: 50 mm at 0.3 m below the start, none at either end. */
  const bowM = (timeS: number) => 0.05 * Math.sin((-lift.heightAt(timeS) / 0.6) * Math.PI);

  it('shows a bow of 50 mm forward at half the height', () => {
    for (const rep of measured({ ...seen, rightM: bowM }).reps) {
      expect(Math.abs((rep.driftForwardM?.value ?? 0) - 0.05)).toBeLessThan(0.004);
      expect(rep.driftBackM?.value).toBeLessThan(0.004);
      expect(Math.abs((rep.largestDeviation?.m.value ?? 0) - 0.05)).toBeLessThan(0.004);
      expect(rep.largestDeviation?.heightShare).toBeCloseTo(0.5, 1);
    }
  });

  it('shows it backward for a lifter who faces left', () => {
    for (const rep of measured({ ...seen, rightM: bowM, setUp: { facing: 'left' } }).reps) {
      expect(Math.abs((rep.driftBackM?.value ?? 0) - 0.05)).toBeLessThan(0.004);
      expect(rep.driftForwardM?.value).toBeLessThan(0.004);
      expect(Math.abs((rep.largestDeviation?.m.value ?? 0) + 0.05)).toBeLessThan(0.004);
    }
  });

  it('is that of the room: a camera rolled by 3° makes no drift once a plumb line is drawn', () => {
    const lean = Math.tan((3 * Math.PI) / 180);
    const rolled = {
      timesS,
      heightM: (timeS: number) => lift.heightAt(timeS) * Math.cos((3 * Math.PI) / 180),
      rightM: (timeS: number) => lift.heightAt(timeS) * Math.sin((3 * Math.PI) / 180),
    };
    const plumb = { top: { xPx: 200 + 400 * lean, yPx: 100 }, bottom: { xPx: 200, yPx: 500 } };
    const withLine = measured({ ...rolled, setUp: { facing: 'right', plumb } });
    expect(withLine.calibration?.rollDeg).toBeCloseTo(3, 6);
    expect(withLine.reps[0]?.driftBackM?.value).toBeLessThan(0.001);
    // Without it, 0.6 m down are 31 mm to the left: 0.6 m × sin 3°.
    expect(measured(rolled).reps[0]?.driftBackM?.value).toBeCloseTo(0.0314, 3);
  });
});

describe('a rail of 7°', () => {
  const railM = (timeS: number) => tan7 * lift.heightAt(timeS);

  it('is 73.7 mm of drift over 0.6 m by an upright path, and none by its own', () => {
    const byUpright = measured({ ...seen, rightM: railM });
    const byRail = measured({
      ...seen,
      rightM: railM,
      exercise: along({ shape: 'rail', toleranceM: 0.02, railTiltDeg: 7 }),
    });
    byUpright.reps.forEach(({ driftBackM }) => {
      expect(Math.abs((driftBackM?.value ?? 0) - 0.0737)).toBeLessThan(0.001);
    });
    byRail.reps.forEach(({ driftBackM, driftForwardM }) => {
      expect(driftBackM?.value).toBeLessThan(0.001);
      expect(driftForwardM?.value).toBeLessThan(0.001);
    });
  });

  it('leans the other way where the lifter stands the other way round', () => {
    const exercise = along({ shape: 'rail', toleranceM: 0.02, railTiltDeg: -7 });
    for (const { driftBackM } of measured({ ...seen, rightM: railM, exercise }).reps) {
      expect(Math.abs((driftBackM?.value ?? 0) - 2 * 0.0737)).toBeLessThan(0.002);
    }
    const reversed = measured({ ...seen, rightM: (timeS) => -railM(timeS), exercise });
    expect(reversed.reps[0]?.driftForwardM?.value).toBeLessThan(0.001);
  });

  it('without a tilt is upright', () => {
    const exercise = along({ shape: 'rail', toleranceM: 0.02 });
    expect(measured({ ...seen, rightM: railM, exercise }).reps[0]?.driftBackM?.value).toBeCloseTo(0.0737, 3);
  });
});

describe('a path that is a curve', () => {
  const curve = along({ shape: 'curve', toleranceM: 0.03 });
  const usualM = (timeS: number) => 0.08 * (lift.heightAt(timeS) / 0.6) ** 2;
  // The third rep lasts from 9.6 s on, and strays by 40 mm half-way up and down.
  const strayM = (timeS: number) =>
    usualM(timeS) + (timeS > 9.4 ? 0.04 * Math.sin((-lift.heightAt(timeS) / 0.6) * Math.PI) ** 2 : 0);

  it('is the set’s own: the third rep strays 40 mm at mid height, the others do not', () => {
    const { reps } = measured({ ...seen, rightM: strayM, exercise: curve });
    expect(reps).toHaveLength(3);
    const [first, second, third] = reps;
    expect(Math.abs((third?.driftForwardM?.value ?? 0) - 0.04)).toBeLessThan(0.004);
    expect(third?.largestDeviation?.heightShare).toBeCloseTo(0.5, 1);
    for (const rep of [first, second]) {
      expect(rep?.driftForwardM?.value).toBeLessThan(0.004);
      expect(rep?.driftBackM?.value).toBeLessThan(0.004);
    }
  });

  it('is not told of a single rep', () => {
    const one = liftOfSet({ reps: [plan], towards: -1 });
    const [rep] = measured({ timesS: evenTimes(one.endS, 30), heightM: one.heightAt, exercise: curve }).reps;
    expect(rep?.driftForwardM).toBeNull();
    expect(rep?.largestDeviation).toBeNull();
    expect(rep?.romM?.value).toBeCloseTo(0.6, 2);
  });
});

describe('paths without an expected line', () => {
  it.each(['arc', 'horizontal', 'free'] as const)('%s: no drift is told', (shape) => {
    for (const rep of measured({ ...seen, exercise: along({ shape, toleranceM: 0.05 }) }).reps) {
      expect(rep.driftForwardM).toBeNull();
      expect(rep.driftBackM).toBeNull();
      expect(rep.largestDeviation).toBeNull();
    }
  });
});
