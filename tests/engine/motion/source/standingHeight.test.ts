import { describe, expect, it } from 'vitest';
import { standingHeightPx } from '../../../../engine/motion/source/standingHeight.ts';
import { drawnBody, squatting } from './drawnLifter.ts';

const looks = (body: ReturnType<typeof drawnBody>) => ({ frames: Array.from({ length: 10 }, () => body) });

describe('the standing height in pixels', () => {
  it('is that from ankles to ears over 0.897', () => {
    expect(standingHeightPx(looks(drawnBody()))).toBeCloseTo(1000, 6);
  });

  it('is taken from the looks that stand', () => {
    const frames = [...looks(squatting(250)).frames, ...looks(drawnBody()).frames];
    expect(standingHeightPx({ frames })).toBeCloseTo(1000, 6);
  });

  it('is not known of somebody who never stands, lies, or is cut off at the feet', () => {
    expect(standingHeightPx(looks(squatting(250)))).toBeNull();
    const lying = drawnBody().map(({ xPx, yPx, confidence }) => ({ xPx: yPx, yPx: xPx, confidence }));
    expect(standingHeightPx(looks(lying))).toBeNull();
    expect(standingHeightPx(looks(drawnBody({}, (joint) => (joint === 'ankle' ? 0.1 : 0.8))))).toBeNull();
  });
});
