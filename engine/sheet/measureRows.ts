import type { Catalogue } from '../exercises/catalogue.ts';
import type { DepthOutcome, Measured, RepMeasurement, SetMeasurement } from '../motion/measurement.ts';
import type { Review } from '../review/review.ts';
import { sayWarningToCoach } from '../wording/sayMeasuring.ts';
import { exerciseName } from './flagRows.ts';

/** The measures of one rep in a sheet's tables and files: seconds, metres, metres per second, with their ±. */
export type MeasuredRep = {
  readonly rep: number;
  /** Media seconds. */
  readonly startS: number;
  readonly endS: number;
  /** Lifting seconds. */
  readonly eccentricS: Measured | null;
  readonly pauseStretchedS: Measured | null;
  readonly concentricS: Measured | null;
  readonly pauseShortenedS: Measured | null;
  readonly romM: Measured | null;
  readonly driftForwardM: Measured | null;
  readonly driftBackM: Measured | null;
  readonly meanConcentricMps: Measured | null;
  readonly peakConcentricMps: Measured | null;
  readonly depth: DepthOutcome | null;
  /** Hip crease above the top of the knee; negative = below it. */
  readonly depthM: Measured | null;
};

/** A clip that was measured, with the names a reader needs. */
export type MeasuredClip = {
  readonly clip: string;
  readonly clipName: string;
  readonly exercise: string;
  /** What was followed; and what the lengths come from: `body` = about. */
  readonly follows: SetMeasurement['follows'];
  readonly scaleFrom: 'disc' | 'knownLength' | 'body' | null;
  readonly reps: readonly MeasuredRep[];
  readonly speedLossPct: Measured | null;
  /** In English, as the coach reads them. */
  readonly warnings: readonly string[];
};

/** Rounds to the millionth: further digits are arithmetic noise. */
const millionths = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;

const plain = (measured: Measured | null): Measured | null =>
  measured === null ? null : { value: millionths(measured.value), plusMinus: millionths(measured.plusMinus) };

const repOf = ({ index, startS, endS, durationsS, joints, ...rep }: RepMeasurement): MeasuredRep => ({
  rep: index,
  startS: millionths(startS),
  endS: millionths(endS),
  eccentricS: plain(durationsS.eccentric),
  pauseStretchedS: plain(durationsS.pauseStretched),
  concentricS: plain(durationsS.concentric),
  pauseShortenedS: plain(durationsS.pauseShortened),
  romM: plain(rep.romM),
  driftForwardM: plain(rep.driftForwardM),
  driftBackM: plain(rep.driftBackM),
  meanConcentricMps: plain(rep.meanConcentricMps),
  peakConcentricMps: plain(rep.peakConcentricMps),
  depth: joints?.depthOutcome ?? null,
  depthM: plain(joints?.depthM ?? null),
});

/** What was measured of a review's clips, in the order of entries and clips; clips that were not are left out. */
export function measuredClips(
  review: Review,
  catalogue: Catalogue,
  measures: ReadonlyMap<string, SetMeasurement> = new Map(),
): MeasuredClip[] {
  return review.entries.flatMap((entry) =>
    entry.clips.flatMap((clip) => {
      const measured = measures.get(clip.id);
      if (measured === undefined) return [];
      return [
        {
          clip: clip.id,
          clipName: clip.name,
          exercise: exerciseName(catalogue, entry.exercise),
          follows: measured.follows,
          scaleFrom: measured.calibration?.from ?? null,
          reps: measured.reps.map(repOf),
          speedLossPct: plain(measured.set.speedLossPct),
          warnings: measured.warnings.map((one) => sayWarningToCoach(one, catalogue.language ?? 'en')),
        },
      ];
    }),
  );
}
