import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import type { Exercise } from '../../../../engine/exercises/exercise.ts';
import { followedIn } from '../../../../engine/motion/source/chooseSource.ts';
import type { Recording } from '../../../../engine/recording/recording.ts';
import { setUpSchema } from '../../../../engine/recording/setUp.ts';
import { exercise } from '../../catalogue.ts';
import { evenTimes } from '../reps/lifts.ts';
import { squatting } from './drawnLifter.ts';

const timesS = evenTimes(9, 30);
/** Three squats of 250 px. */
const downPx = (timeS: number): number => 125 * (1 - Math.cos((2 * Math.PI * timeS) / 3));
const still = { moves: false, removable: true, frames: [], uprights: [] };

type Seen = {
  /** How far down the disc is; null = it is not seen. */
  readonly discPx?: (timeS: number) => number | null;
  readonly bodyPx?: ((timeS: number) => number) | null;
  /** 132 px of a disc of 225 mm make 1.70 m of a lifter of 1000 px. */
  readonly radiusPx?: number;
  readonly setUp?: v.InferInput<typeof setUpSchema>;
  readonly lift?: Partial<Exercise>;
};

function followed({ discPx, bodyPx = downPx, radiusPx = 132, setUp = {}, lift = {} }: Seen) {
  const recording: Recording = {
    disc: discPx
      ? {
          method: 'drawn',
          frames: timesS.map((timeS) => {
            const down = discPx(timeS);
            return down === null ? null : { xPx: 480, yPx: 200 + down, confidence: 0.9 };
          }),
          outline: { radiusPx, radiusPlusMinusPx: 0.3, axisRatio: 1, majorAxisDeg: 90 },
          camera: still,
        }
      : null,
    point: null,
    joints: bodyPx && { method: 'drawn', everyFrames: 1, frames: timesS.map((timeS) => squatting(bodyPx(timeS))) },
    warnings: [],
  };
  const tracked = followedIn({
    recording,
    exercise: exercise({ pattern: 'squat', implement: 'barbell', trackedPoint: 'disc', ...lift }),
    setUp: v.parse(setUpSchema, setUp),
    mediaTimesS: timesS,
    shown: { width: 1000, height: 1200 },
  });
  return tracked && [tracked.follows, tracked.because];
}

describe('what is followed', () => {
  it('is the disc that moves with the lifter', () => {
    expect(followed({ discPx: downPx })).toEqual(['disc', 'discMovesWithLifter']);
  });

  it('is the shoulders, on which the bar lies, where there is no disc', () => {
    expect(followed({})).toEqual(['shoulders', 'noDisc']);
  });

  it('is never a disc that stands, hardly moves, moves otherwise, or is hidden for half of the way', () => {
    expect(followed({ discPx: () => 0 })).toEqual(['shoulders', 'discStandsStill']);
    expect(followed({ discPx: (timeS) => downPx(timeS) / 6 })).toEqual(['shoulders', 'discStandsStill']);
    expect(followed({ discPx: (timeS) => downPx(1.7 * timeS + 1) })).toEqual(['shoulders', 'discMovesOtherwise']);
    expect(followed({ discPx: (timeS) => (timeS % 3 > 1.5 ? null : downPx(timeS)) })).toEqual([
      'shoulders',
      'discSeldomSeen',
    ]);
  });

  it('is the disc where the body stands still, or nobody is seen', () => {
    expect(followed({ discPx: downPx, bodyPx: () => 0 })).toEqual(['disc', 'discUnchecked']);
    expect(followed({ discPx: downPx, bodyPx: null })).toEqual(['disc', 'discUnchecked']);
  });

  it('is no head taken for a disc: the lifter would be 3.6 m tall', () => {
    expect(followed({ discPx: downPx, radiusPx: 62 })).toEqual(['shoulders', 'discOfUnlikelySize']);
  });

  it('is the body where the lifter’s own weight is the load, whatever moves beside it', () => {
    const lift = { pattern: 'squat', implement: 'body weight', trackedPoint: 'hip' } as const;
    expect(followed({ discPx: downPx, lift })).toEqual(['hips', 'noDiscExpected']);
  });

  it('is what the coach clicked or chose, before all else', () => {
    const click = { frame: 0, what: 'disc', at: { xPx: 480, yPx: 200 } } as const;
    expect(followed({ discPx: () => 0, setUp: { clicks: [click] } })).toEqual(['disc', 'clicked']);
    expect(followed({ discPx: downPx, setUp: { follow: 'hands' } })).toEqual(['hands', 'chosen']);
    expect(followed({ discPx: () => 0, setUp: { follow: 'disc' } })).toEqual(['disc', 'chosen']);
  });

  it('is nothing where there is nothing', () => {
    expect(followed({ bodyPx: null })).toBeNull();
  });
});
