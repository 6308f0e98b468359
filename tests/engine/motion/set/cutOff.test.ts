import { describe, expect, it } from 'vitest';
import { pathOf } from '../../../../engine/motion/set/tracked.ts';
import { evenTimes, liftOf } from '../reps/lifts.ts';
import { whiteNoise } from '../signal/whiteNoise.ts';

const lift = liftOf(0, [
  { toM: 0, takesS: 1 },
  { toM: -0.5, takesS: 1.4 },
  { toM: 0, takesS: 0.9 },
  { toM: 0, takesS: 0.6 },
  { toM: -0.5, takesS: 1.2 },
  { toM: 0, takesS: 0.8 },
  { toM: 0, takesS: 4 },
]);
const times = evenTimes(lift.endS, 30);
const noise = whiteNoise(times.length, 7);

/** The cut-off of the load seen in pixels of 2 mm, without the frames that are not seen. */
function cutOffHz(isSeen: (timeS: number) => boolean): number {
  const sightings = times.map((timeS, frame) =>
    isSeen(timeS)
      ? { xPx: 100, yPx: 400 - 500 * lift.heightAt(timeS) + 0.3 * (noise[frame] ?? 0), confidence: 1 }
      : null,
  );
  return pathOf(
    {
      follows: 'disc',
      because: 'discUnchecked',
      sightings,
      camera: null,
      wanderPx: 0,
      givesRange: true,
      isGesture: null,
      doubtShare: 0,
    },
    times,
    null,
  ).cutOffHz;
}

describe('the cut-off of a load that is not seen for a while', () => {
  it.each([
    [0.8, 2, 2.8],
    [1.2, 4.4, 5.6],
  ])('is that of the longest stretch alone, with a gap of %f s', (_, fromS, toS) => {
    expect(cutOffHz((timeS) => timeS <= fromS || timeS >= toS)).toBe(cutOffHz((timeS) => timeS >= toS));
  });
});
