import { describe, expect, it } from 'vitest';
import { sayWarningToCoach } from '../../../../engine/wording/sayMeasuring.ts';
import { evenTimes, liftOfSet } from '../reps/lifts.ts';
import { measured, squareOn } from './seenSet.ts';

const plan = { firstS: 2, pauseS: 0.3, secondS: 1, restS: 1, rangeM: 0.6 };
const lift = liftOfSet({ reps: [plan, plan], towards: -1 });
const seen = { timesS: evenTimes(lift.endS, 30), heightM: lift.heightAt };

/** The outline of a disc seen from so far out of square. */
const turned = (degrees: number) => ({
  ...squareOn,
  axisRatio: Math.cos((degrees * Math.PI) / 180),
});

describe('a camera out of square', () => {
  it('by 25° tells no drift, says so, and still tells heights and tempo', () => {
    const { reps, warnings, calibration } = measured({ ...seen, outline: turned(25) });
    expect(calibration?.offAxisDeg).toBeCloseTo(25, 6);
    expect(warnings.map((one) => sayWarningToCoach(one, 'en')).join(' ')).toMatch(/25° off square.*no sideways drift/);
    for (const rep of reps) {
      expect(rep.driftForwardM).toBeNull();
      expect(rep.driftBackM).toBeNull();
      expect(rep.largestDeviation).toBeNull();
      expect(rep.romM?.value).toBeCloseTo(0.6, 2);
      expect(rep.durationsS.eccentric?.value).toBeCloseTo(2, 1);
    }
  });

  it('by 15° tells a corrected drift and warns', () => {
    const cosine = Math.cos((15 * Math.PI) / 180);
    const bowM = (timeS: number) => 0.05 * cosine * Math.sin((-lift.heightAt(timeS) / 0.6) * Math.PI);
    const { reps, warnings } = measured({ ...seen, rightM: bowM, outline: turned(15) });
    expect(warnings.map((one) => sayWarningToCoach(one, 'en')).join(' ')).toMatch(/15° off square/);
    for (const rep of reps) expect(Math.abs((rep.driftForwardM?.value ?? 0) - 0.05)).toBeLessThan(0.004);
  });

  it('by 5° says nothing', () => {
    expect(measured({ ...seen, outline: turned(5) }).warnings).toEqual([]);
  });
});

describe('another view than from the side', () => {
  it.each(['front', 'rear', 'oblique'] as const)('(%s) tells no drift and says so', (view) => {
    const { reps, warnings } = measured({ ...seen, view });
    expect(reps).toHaveLength(2);
    expect(reps[0]?.driftForwardM).toBeNull();
    expect(warnings.map((one) => sayWarningToCoach(one, 'en')).join(' ')).toMatch(/not filmed from the side/);
  });
});

describe('a lifter whose facing nobody told', () => {
  it('has no drift, and a warning that says what to do', () => {
    const { reps, warnings, facing } = measured({ ...seen, setUp: {} });
    expect(facing).toBeNull();
    expect(reps[0]?.driftForwardM).toBeNull();
    expect(reps[0]?.romM?.value).toBeCloseTo(0.6, 2);
    expect(warnings.map((one) => sayWarningToCoach(one, 'en')).join(' ')).toMatch(/facing is not known/);
  });
});
