import { frameAtUs, frameStartUs } from '../time/frames.ts';
import type { FrameTable } from '../time/frameTable.ts';
import { type FrameRange, holds } from './section.ts';

type SpanOfRep = { readonly firstFrame: number; readonly lastFrame: number };

/** A pause between two sets is longer than this … */
const leastPauseUs = 8_000_000;
/** … and than so many times the usual pause between reps. */
const timesUsual = 3;

/**
 * Where footage of several sets can be cut: in the middle of each pause between groups of reps; the first frame of each part but
 * the first. Empty where the reps are one group.
 */
export function cutsBetween(reps: readonly SpanOfRep[], table: FrameTable): number[] {
  const rising = [...reps].sort((one, other) => one.firstFrame - other.firstFrame);
  const pauses = rising.slice(1).map((rep, index) => {
    const endUs = frameStartUs(table, rising[index]?.lastFrame ?? 0);
    return { endUs, startUs: frameStartUs(table, rep.firstFrame) };
  });
  const lengths = pauses.map(({ endUs, startUs }) => startUs - endUs).sort((one, other) => one - other);
  const usual = Math.max(0, lengths[(lengths.length - 1) >> 1] ?? 0);
  // With two groups of one rep each, the one pause there is would be the usual one.
  const least = lengths.length < 2 ? leastPauseUs : Math.max(leastPauseUs, timesUsual * usual);
  return pauses
    .filter(({ endUs, startUs }) => startUs - endUs >= least)
    .map(({ endUs, startUs }) => frameAtUs(table, Math.round((endUs + startUs) / 2)));
}

/** The parts of a range that cuts make of it; each cut is the first frame of a part. Cuts at its edges and outside make none. */
export function partsOf(range: FrameRange, cuts: readonly number[]): FrameRange[] {
  const rising = [...new Set(cuts)].filter((cut) => cut > range.firstFrame && holds(range, cut)).sort((a, b) => a - b);
  const firsts = [range.firstFrame, ...rising];
  return firsts.map((firstFrame, index) => ({
    firstFrame,
    lastFrame: index + 1 < firsts.length ? (firsts[index + 1] ?? 0) - 1 : range.lastFrame,
  }));
}
