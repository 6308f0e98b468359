import { describe, expect, it } from 'vitest';
import { meanPropulsiveMps } from '../../../../engine/motion/speed/propulsive.ts';

const stepS = 0.01;

describe('the mean speed of the propulsive part', () => {
  it('is the mean of all while nothing brakes harder than free fall', () => {
    expect(meanPropulsiveMps([0.4, 0.5, 0.6, 0.5, 0.4], { stepS: 0.1 })).toBeCloseTo(0.48, 12);
  });

  // By hand: 0.5 m/s for 0.3 s, then braked at 20 m/s²: the last even sample's neighbours already differ by 10 m/s².
  it('leaves out the braking at the end', () => {
    const speeds = [...Array.from({ length: 30 }, () => 0.5), 0.3, 0.1, 0];
    expect(meanPropulsiveMps(speeds, { stepS })).toBeCloseTo(0.5, 12);
  });

  it('is unknown for fewer than three samples', () => {
    expect(meanPropulsiveMps([0.5, 0.5], { stepS })).toBeNull();
  });
});
