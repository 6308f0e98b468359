import { describe, expect, it } from 'vitest';
import { speedLossPct } from '../../engine/motion/set/summarise.ts';
import { loadAtSpeedKg, loadSpeedLine } from '../../engine/progress/loadSpeedLine.ts';

const sure = (value: number) => ({ value, plusMinus: 0 });

function lineOf(loadsKg: readonly number[], speedsMps: readonly number[]) {
  const line = loadSpeedLine(loadsKg.map((loadKg, i) => ({ loadKg, speedMps: speedsMps[i] ?? Number.NaN })));
  if (line === null) throw new Error('no line');
  return line;
}

// Definition: Sánchez-Medina & González-Badillo 2011, MSSE 43:1725.
describe('speed loss', () => {
  it('from 0.60 to 0.48 m/s is 20 %', () => {
    expect(speedLossPct([sure(0.55), sure(0.6), sure(0.48)])?.value).toBeCloseTo(20, 9);
  });
});

// Worked profiles, computed apart from the product.
describe("a lifter's own line of speed over load", () => {
  it('through points that lie on it', () => {
    const line = lineOf([40, 60, 80, 90], [1.1, 0.85, 0.6, 0.475]);
    expect(line.slopeMpsPerKg).toBeCloseTo(-0.0125, 12);
    expect(line.interceptMps).toBeCloseTo(1.6, 12);
    expect(line.rSquared).toBeCloseTo(1, 12);
    expect(loadAtSpeedKg(line, 0.17)).toBeCloseTo(114.4, 2);
    expect(loadAtSpeedKg(line, 0.16)).toBeCloseTo(115.2, 2);
    expect(loadAtSpeedKg(line, 0.1)).toBeCloseTo(120, 2);
  });

  it('through points that scatter', () => {
    const line = lineOf([60, 70, 80, 90], [0.82, 0.69, 0.58, 0.43]);
    expect(line.slopeMpsPerKg).toBeCloseTo(-0.0128, 12);
    expect(line.interceptMps).toBeCloseTo(1.59, 12);
    expect(line.rSquared).toBeCloseTo(0.99659, 5);
    expect(loadAtSpeedKg(line, 0.17)).toBeCloseTo(110.94, 2);
    expect(loadAtSpeedKg(line, 0)).toBeCloseTo(124.22, 2);
  });
});
