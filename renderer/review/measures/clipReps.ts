import type { RepMeasurement } from '../../../engine/motion/measurement.ts';
import type { Rep } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { repFrames } from '../../player/repAtFrame.ts';
import { secondsOfFrame } from '../model/moments.ts';

/** The card's number for a measured rep: that of the marked rep it overlaps most; null for none. */
export function clipRepOf(measured: RepMeasurement, reps: readonly Rep[], table: FrameTable): number | null {
  let found: { readonly index: number; readonly sharedS: number } | null = null;
  for (const { index } of reps) {
    const frames = repFrames(reps, index, table);
    if (frames === null) continue;
    const [startS, endS] = [secondsOfFrame(frames.first, table), secondsOfFrame(frames.last, table)];
    const sharedS = Math.min(measured.endS, endS) - Math.max(measured.startS, startS);
    const shorterS = Math.max(1e-6, Math.min(measured.endS - measured.startS, endS - startS));
    if (sharedS / shorterS >= 0.5 && sharedS > (found?.sharedS ?? 0)) found = { index, sharedS };
  }
  return found?.index ?? null;
}

/** The card's numbers for measured reps, ascending; reps that match no marked rep are left out. */
export const clipRepsOf = (
  indices: readonly number[],
  measured: readonly RepMeasurement[],
  reps: readonly Rep[],
  table: FrameTable,
): readonly number[] =>
  indices
    .flatMap((index) => {
      const rep = measured.find((one) => one.index === index);
      return rep === undefined ? [] : (clipRepOf(rep, reps, table) ?? []);
    })
    .sort((a, b) => a - b);
