import { describe, expect, it } from 'vitest';
import { measureSection } from '../../../../engine/motion/set/measureSection.ts';
import { warning } from '../../../../engine/recording/warnings.ts';
import { evenTimes, liftOfSet } from '../reps/lifts.ts';
import { seenSet } from './seenSet.ts';

// 2 s down, 0.5 s at the bottom, 1 s up, 1 s at the top; 0.6 m; they begin at 1, 5.5 and 10 s.
const plan = { firstS: 2, pauseS: 0.5, secondS: 1, restS: 1, rangeM: 0.6 };
const lift = liftOfSet({ reps: [plan, plan, plan], towards: -1 });
const timesS = evenTimes(lift.endS, 30);
const set = seenSet({ timesS, heightM: lift.heightAt });
/** From 5 s to 9.9 s: the second rep alone. */
const range = { firstFrame: 150, lastFrame: 297 };

describe('the section of a set that shows its second rep', () => {
  const { reps, curves, track } = measureSection(set, range);

  it('is measured as one rep, at its times in the footage', () => {
    expect(reps).toHaveLength(1);
    const [rep] = reps;
    expect(rep?.index).toBe(1);
    expect(rep?.startS).toBeCloseTo(5.5, 1);
    expect(rep?.endS).toBeCloseTo(9, 1);
    expect(rep?.phases.eccentric?.endS).toBeCloseTo(7.5, 1);
    expect(rep?.phases.concentric?.startS).toBeCloseTo(8, 1);
    expect(rep?.peakSpeedAtS).toBeCloseTo(8.5, 1);
    expect(Math.abs((rep?.romM?.value ?? 0) - 0.6)).toBeLessThan(rep?.romM?.plusMinus ?? 0);
  });

  it('has curves with one item a frame of the footage, and nothing outside the section', () => {
    expect(curves.timesS).toHaveLength(timesS.length);
    expect(curves.timesS[150]).toBeCloseTo(5, 6);
    for (const [frame, timeS] of timesS.entries()) {
      const height = curves.heightM[frame];
      // Over the section's first frame, where the bar is at the top.
      const expected = lift.heightAt(timeS) - lift.heightAt(5);
      if (frame < 150 || frame > 297) expect(height).toBeNull();
      else expect(Math.abs((height ?? 99) - expected)).toBeLessThan(0.004);
    }
    expect(track.frames).toBe(148);
  });

  it('takes edges by the footage’s clock', () => {
    const [rep] = measureSection({ ...set, edges: [{ startS: 5.3, endS: 9.2 }] }, range).reps;
    expect(rep?.startS).toBeCloseTo(5.3, 6);
    expect(rep?.endS).toBeCloseTo(9.2, 6);
  });

  it('warns of its own clicks alone, by its own count of frames', () => {
    const warnings = [10, 160, 298].map((frame) => warning('noRimAtClick', { frame }));
    const recording = { ...set.recording, warnings: [...warnings, warning('cameraMoves', {})] };
    expect(measureSection({ ...set, recording }, range).warnings).toEqual([
      warning('noRimAtClick', { frame: 10 }),
      warning('cameraMoves', {}),
    ]);
  });
});

it('a section of all frames is measured as the footage is', () => {
  const whole = measureSection(set, { firstFrame: 0, lastFrame: timesS.length - 1 });
  expect(whole.reps.map(({ startS }) => Math.round(startS * 2) / 2)).toEqual([1, 5.5, 10]);
});
