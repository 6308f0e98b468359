import { describe, expect, it } from 'vitest';
import { bendDeg, leanDeg } from '../../engine/motion/joints/angles.ts';

/** A point given in metres with y upwards, in a picture of 1000 px a metre with y downwards. */
const at = (x: number, y: number) => ({ xPx: 500 + 1000 * x, yPx: 2000 - 1000 * y });

// Conventions chosen after clinical goniometry and the ISB recommendations (Wu & Cavanagh 1995; Wu et al. 2002, 2005; from
// memory); the vectors by hand.
describe('angles of a squat seen from the side', () => {
  const knee = at(0.42, 0.5);
  const hip = at(0, 0.5);
  const shoulder = at(0.25, 0.95);

  it('knee: 73.686° inside, bent by 106.314°', () => {
    expect(bendDeg(hip, knee, at(0.3, 0.09))).toBeCloseTo(106.314, 3);
  });

  it('hip: 60.945° inside, bent by 119.055°', () => {
    expect(180 - bendDeg(shoulder, hip, knee)).toBeCloseTo(60.945, 3);
  });

  it('trunk: leans 29.055° forward', () => {
    expect(leanDeg(hip, shoulder, 'right')).toBeCloseTo(29.055, 3);
    expect(leanDeg(hip, shoulder, 'left')).toBeCloseTo(-29.055, 3);
  });

  it.each([
    [0.01, 1.33],
    [0.02, 2.66],
  ])('a landmark %d m off on a segment of 0.43 m turns it by %d°', (offM, turnedDeg) => {
    expect(leanDeg(at(0, 0), at(offM, 0.43), 'right')).toBeCloseTo(turnedDeg, 2);
  });
});

// Segments as shares of stature: Drillis & Contini 1966 in Winter, Fig. 4.1 (from memory); the bar over the middle of the
// foot, 0.036 of stature in front of the ankle (chosen). sin(trunk) = (0.036 + 0.245 − 0.246 sin(shank)) / 0.288.
it.each([
  [15, 105, 49],
  [20, 110, 43.1],
  [25, 115, 37.9],
  [30, 120, 33.3],
  [35, 125, 29.1],
  [40, 130, 25.3],
])('thigh level, shank leaning %d°: knee bent by %d°, trunk leaning %d°', (shankDeg, kneeDeg, trunkDeg) => {
  const shank = (shankDeg * Math.PI) / 180;
  const kneeX = 0.246 * Math.sin(shank);
  const height = 0.246 * Math.cos(shank);
  const hipX = kneeX - 0.245;
  const [ankle, knee, hip] = [at(0, 0), at(kneeX, height), at(hipX, height)];
  const shoulder = at(0.036, height + Math.sqrt(0.288 ** 2 - (0.036 - hipX) ** 2));
  expect(leanDeg(ankle, knee, 'right')).toBeCloseTo(shankDeg, 9);
  expect(bendDeg(hip, knee, ankle)).toBeCloseTo(kneeDeg, 9);
  expect(leanDeg(hip, shoulder, 'right')).toBeCloseTo(trunkDeg, 1);
});
