import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { DiscRecording } from '../../../../engine/recording/recording.ts';
import { appFolder } from '../workbench.ts';

type Truth = {
  readonly pts: readonly number[];
  readonly reps: readonly {
    readonly phases_s: Readonly<Record<'eccentric' | 'bottom_pause' | 'concentric' | 'top_pause', [number, number]>>;
    readonly rom_m: number;
  }[];
};

/** What the figure of the squat clip did. */
export const squatTruth: Truth = JSON.parse(
  readFileSync(path.join(appFolder, 'tests/footage/squat-side.truth.json'), 'utf8'),
);

const pxPerM = 255;

/** Minimum jerk (Flash & Hogan 1985): the share of the way after a share of the time. */
const minimumJerk = (share: number): number => {
  const t = Math.min(1, Math.max(0, share));
  return t ** 3 * (10 - 15 * t + 6 * t ** 2);
};

/**
 * How far below its start the bar of the squat clip is, in metres: minimum jerk between the truth's phase times; each rep
 * as deep as a share of the true depth.
 */
function depthM(timeS: number, depthShares: readonly number[]): number {
  return squatTruth.reps.reduce((depth, { phases_s: phases, rom_m: romM }, index) => {
    const part = ([from, to]: readonly [number, number]) => minimumJerk((timeS - from) / (to - from));
    return depth + (depthShares[index] ?? 1) * romM * (part(phases.eccentric) - part(phases.concentric));
  }, 0);
}

/** The disc of the squat clip as a recording that sees it in each frame, without any error. */
export function knownDisc(method: string, depthShares: readonly number[] = []): DiscRecording {
  return {
    method,
    frames: squatTruth.pts.map((timeS) => ({
      xPx: 440,
      yPx: 110 + depthM(timeS, depthShares) * pxPerM,
      confidence: 0.95,
    })),
    outline: { radiusPx: 0.225 * pxPerM, radiusPlusMinusPx: 0.1, axisRatio: 1, majorAxisDeg: 90 },
    camera: { moves: false, removable: true, frames: [], uprights: [] },
  };
}
