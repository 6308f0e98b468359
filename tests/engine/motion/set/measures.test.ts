import { describe, expect, it } from 'vitest';
import { sayWarningToCoach } from '../../../../engine/wording/sayMeasuring.ts';
import { evenTimes, liftOf, liftOfSet, minimumJerk } from '../reps/lifts.ts';
import { discRadiusPx, measured, squareOn } from './seenSet.ts';

// 2 s down, 0.5 s at the bottom, 1 s up, 1 s at the top; 0.6 m; the first begins at 1 s.
const plan = { firstS: 2, pauseS: 0.5, secondS: 1, restS: 1, rangeM: 0.6 };
const lift = liftOfSet({ reps: [plan, plan, plan], towards: -1 });
const timesS = evenTimes(lift.endS, 30);
const seen = { timesS, heightM: lift.heightAt };

describe('a set of three reps of 0.6 m', () => {
  const { reps, track, follows, warnings } = measured(seen);

  it('has its phases, their times, and no pause after the last', () => {
    expect(follows).toBe('disc');
    expect(reps.map(({ index }) => index)).toEqual([1, 2, 3]);
    reps.forEach(({ durationsS, phases, startS, endS }, index) => {
      expect(startS).toBeCloseTo(1 + 4.5 * index, 1);
      expect(endS).toBeCloseTo(4.5 + 4.5 * index, 1);
      expect(durationsS.eccentric?.value).toBeCloseTo(2, 1);
      expect(durationsS.pauseStretched?.value).toBeCloseTo(0.5, 1);
      expect(durationsS.concentric?.value).toBeCloseTo(1, 1);
      expect(phases.concentric?.startS).toBeCloseTo(3.5 + 4.5 * index, 1);
      if (index < 2) expect(durationsS.pauseShortened?.value).toBeCloseTo(1, 1);
      else expect(durationsS.pauseShortened).toBeNull();
    });
  });

  it('has its range, and the speeds of minimum jerk: mean 0.6 m/s, peak 1.875 times that half-way up', () => {
    reps.forEach(({ romM, meanConcentricMps, peakConcentricMps, peakSpeedAtS }, index) => {
      expect(Math.abs((romM?.value ?? 0) - 0.6)).toBeLessThan(romM?.plusMinus ?? 0);
      expect(Math.abs((meanConcentricMps?.value ?? 0) - 0.6)).toBeLessThan(meanConcentricMps?.plusMinus ?? 0);
      expect(Math.abs((peakConcentricMps?.value ?? 0) - 1.125)).toBeLessThan(peakConcentricMps?.plusMinus ?? 0);
      expect(peakSpeedAtS).toBeCloseTo(4 + 4.5 * index, 1);
    });
  });

  it('has no drift and no warning when it goes straight up in a room with posts', () => {
    for (const { driftForwardM, driftBackM, bounces, downOnWayUpM } of reps) {
      expect(driftForwardM?.value).toBeLessThan(0.001);
      expect(driftBackM?.value).toBeLessThan(0.001);
      expect(bounces).toBe(1);
      expect(downOnWayUpM?.value).toBeLessThan(0.002);
    }
    expect(warnings).toEqual([]);
    expect(track).toEqual({ frames: timesS.length, lost: 0, meanConfidence: expect.closeTo(0.9, 9) });
  });

  it('has curves with one item a frame, in metres over the first frame', () => {
    const { curves } = measured(seen);
    expect(curves.timesS).toHaveLength(timesS.length);
    for (const curve of [curves.heightM, curves.forwardM, curves.speedMps, curves.positionPx]) {
      expect(curve).toHaveLength(timesS.length);
    }
    timesS.forEach((timeS, frame) => {
      expect(Math.abs((curves.heightM[frame] ?? 99) - lift.heightAt(timeS))).toBeLessThan(0.004);
    });
  });
});

describe('slow motion at a quarter of the speed', () => {
  const { reps, curves } = measured({ ...seen, realTimeFactor: 4 });

  it('has durations and speeds of the lift, and stamps of the clip', () => {
    expect(reps).toHaveLength(3);
    const [first] = reps;
    expect(first?.durationsS.eccentric?.value).toBeCloseTo(2, 1);
    expect(first?.durationsS.concentric?.value).toBeCloseTo(1, 1);
    expect(first?.meanConcentricMps?.value).toBeCloseTo(0.6, 1);
    expect(first?.startS).toBeCloseTo(4, 0);
    expect(first?.phases.eccentric?.endS).toBeCloseTo(12, 0);
    expect(first?.endS).toBeCloseTo(18, 0);
    expect(first?.peakSpeedAtS).toBeCloseTo(16, 0);
    expect(curves.timesS.at(-1)).toBeCloseTo((timesS.at(-1) ?? 0) * 4, 3);
  });

  it('takes edges in the time of the clip', () => {
    const [first] = measured({ ...seen, realTimeFactor: 4, edges: [{ startS: 3.2, endS: 18.8 }] }).reps;
    expect(first?.startS).toBeCloseTo(3.2, 6);
    expect(first?.endS).toBeCloseTo(18.8, 6);
    expect(first?.durationsS.eccentric?.value).toBeCloseTo(2.2, 1);
    expect(first?.manualEdges.toSorted()).toEqual(['end', 'start']);
  });
});

describe('speed over the set', () => {
  it('that falls from 0.60 to 0.48 m/s is a loss of 20 %', () => {
    const reps = [1, 1.05, 1.1, 1.25].map((secondS) => ({ ...plan, secondS }));
    const slower = liftOfSet({ reps, towards: -1 });
    const { set } = measured({ timesS: evenTimes(slower.endS, 30), heightM: slower.heightAt });
    expect(Math.abs((set.speedLossPct?.value ?? 0) - 20)).toBeLessThan(1);
    expect(set.speedLossPct?.plusMinus).toBeGreaterThan(1);
  });

  it('is counted from the fastest rep, not from the first', () => {
    const reps = [1.2, 1, 1.25].map((secondS) => ({ ...plan, secondS }));
    const slower = liftOfSet({ reps, towards: -1 });
    const { set } = measured({ timesS: evenTimes(slower.endS, 30), heightM: slower.heightAt });
    expect(Math.abs((set.speedLossPct?.value ?? 0) - 20)).toBeLessThan(1);
  });

  it('and spreads are not told of a single rep', () => {
    const one = liftOfSet({ reps: [plan], towards: -1 });
    const { set, reps } = measured({ timesS: evenTimes(one.endS, 30), heightM: one.heightAt });
    expect(reps).toHaveLength(1);
    expect(set).toEqual({ speedLossPct: null, romSpreadM: null, eccentricSpreadS: null });
  });

  it('has spreads that are sample standard deviations', () => {
    const reps = [0.58, 0.6, 0.62].map((rangeM, index) => ({ ...plan, rangeM, firstS: 1.5 + 0.5 * index }));
    const varied = liftOfSet({ reps, towards: -1 });
    const { set } = measured({ timesS: evenTimes(varied.endS, 30), heightM: varied.heightAt });
    // Of 0.58, 0.60, 0.62 and of 1.5, 2, 2.5: steps of d have a sample standard deviation of d.
    expect(set.romSpreadM).toBeCloseTo(0.02, 3);
    expect(set.eccentricSpreadS).toBeCloseTo(0.5, 1);
  });
});

describe('turns', () => {
  const bounced = liftOf(0, [
    { toM: 0, takesS: 1 },
    { toM: -0.6, takesS: 1.5 },
    { toM: -0.57, takesS: 0.35 },
    { toM: -0.6, takesS: 0.35 },
    { toM: -0.25, takesS: 0.8 },
    { toM: -0.275, takesS: 0.5 },
    { toM: 0, takesS: 0.8 },
    { toM: 0, takesS: 1 },
  ]);

  it('at the bottom are counted, and sinking back on the way up is measured', () => {
    const [rep] = measured({ timesS: evenTimes(bounced.endS, 30), heightM: bounced.heightAt }).reps;
    expect(rep?.bounces).toBe(2);
    expect(Math.abs((rep?.downOnWayUpM?.value ?? 0) - 0.025)).toBeLessThan(0.003);
  });
});

describe('intervals', () => {
  it('hold the truth nine times in ten whatever the noise', () => {
    for (const noisePx of [0.1, 0.4, 1]) {
      let held = 0;
      let all = 0;
      for (let seed = 1; seed <= 8; seed += 1) {
        const noisy = measured({ ...seen, noise: { px: noisePx, seed } });
        for (const { durationsS, romM, meanConcentricMps } of noisy.reps) {
          const pairs = [
            [durationsS.eccentric, 2],
            [durationsS.pauseStretched, 0.5],
            [durationsS.concentric, 1],
            [romM, 0.6],
            [meanConcentricMps, 0.6],
          ] as const;
          for (const [told, truth] of pairs) {
            all += 1;
            if (told && Math.abs(told.value - truth) <= told.plusMinus) held += 1;
          }
        }
      }
      expect(all).toBe(8 * 3 * 5);
      expect(held / all).toBeGreaterThanOrEqual(0.9);
    }
  });
});

describe('a set that cannot be measured', () => {
  it('of too few frames says so', () => {
    const { reps, follows, warnings } = measured({ timesS: timesS.slice(0, 6), heightM: minimumJerk });
    expect(reps).toEqual([]);
    expect(follows).toBe('nothing');
    expect(warnings.map((one) => sayWarningToCoach(one, 'en')).join(' ')).toMatch(/too few/);
  });

  it('because nothing goes there and back says so', () => {
    const { reps, warnings } = measured({ timesS, heightM: () => 0.4 });
    expect(reps).toEqual([]);
    expect(warnings.map((one) => sayWarningToCoach(one, 'en')).join(' ')).toMatch(/no rep/);
  });

  it('without a scale still tells tempo, and no length', () => {
    const { reps, calibration, warnings, set, curves, follows } = measured({ ...seen, pointOnly: true });
    expect(follows).toBe('point');
    expect(calibration).toBeNull();
    expect(reps).toHaveLength(3);
    for (const rep of reps) {
      expect(rep.durationsS.eccentric?.value).toBeCloseTo(2, 1);
      expect(rep.romM).toBeNull();
      expect(rep.meanConcentricMps).toBeNull();
      expect(rep.driftForwardM).toBeNull();
      expect(rep.downOnWayUpM).toBeNull();
    }
    expect(set.speedLossPct).toBeNull();
    expect(curves.heightM.every((height) => height === null)).toBe(true);
    expect(warnings.map((one) => sayWarningToCoach(one, 'en')).join(' ')).toMatch(/no scale/);
  });
});

describe('the scale', () => {
  const setUp = {
    facing: 'right',
    knownLength: { from: { xPx: 100, yPx: 600 }, to: { xPx: 100, yPx: 300 }, lengthM: 1.2 },
  } as const;

  it('of a known length comes before that of the disc: 1.2 m on 300 px, where the disc says 3 mm a pixel', () => {
    const { calibration, reps } = measured({ ...seen, setUp });
    expect(calibration).toMatchObject({ from: 'knownLength', metresPerPixel: 0.004 });
    // 0.6 m of the disc's scale are 200 px, and those 0.8 m.
    expect(reps[0]?.romM?.value).toBeCloseTo(0.8, 2);
  });

  it('of the disc follows its diameter', () => {
    const { reps } = measured({ ...seen, setUp: { facing: 'right', discDiameterM: 0.225 } });
    expect(reps[0]?.romM?.value).toBeCloseTo(0.3, 2);
  });

  it('is taken along the upright: a disc narrowed sideways makes no height longer', () => {
    const outline = { ...squareOn, radiusPx: discRadiusPx, axisRatio: 0.97, majorAxisDeg: 90 };
    expect(measured({ ...seen, outline }).reps[0]?.romM?.value).toBeCloseTo(0.6, 2);
  });
});
