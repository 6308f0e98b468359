import type { Clip, Rep } from '../review/review.ts';
import { type Moment, momentUs } from '../time/moment.ts';

/** A stretch of a clip; in microseconds, or in frames where no time is known. */
type Span = { readonly from: number; readonly to: number };
type SpannedRep = Span & { readonly index: number };

/** Share of the shorter rep that must lie in the other for the two to be the same one. */
const leastShare = 0.5;

/**
 * How far a moment lies into its clip. Null where that can't be laid beside the other reviewers' moments: a frame without
 * a time base beside seconds.
 */
type Clock = (moment: Moment) => number | null;

function clockOf(clip: Clip, clips: readonly Clip[]): Clock {
  const times = clip.facts ?? clips.find(({ facts }) => facts !== undefined)?.facts;
  const inSeconds = clips.some(({ reps }) => reps.some(({ start }) => 'seconds' in start));
  if (times !== undefined || inSeconds) return (moment) => momentUs(moment, times);
  return (moment) => ('frame' in moment ? moment.frame : null);
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** Reps in the order of their time. One without an end lasts until the next; the last as long as the others do. */
function spansOf(reps: readonly Rep[], clock: Clock): readonly SpannedRep[] | null {
  const known = reps
    .map(({ index, start, end }) => ({ index, from: clock(start), to: end === undefined ? undefined : clock(end) }))
    .sort((one, other) => (one.from ?? 0) - (other.from ?? 0) || one.index - other.index);
  const lengths: number[] = [];
  const spans: SpannedRep[] = [];
  for (const [at, { index, from, to }] of known.entries()) {
    if (from === null || to === null) return null;
    const end = to ?? known[at + 1]?.from ?? from + median(lengths);
    spans.push({ index, from, to: Math.max(from, end) });
    lengths.push(end - from);
  }
  return spans;
}

/** How well two stretches cover each other, 0-1; null where they are not the same rep. */
function likeness(one: Span, other: Span): number | null {
  const shared = Math.min(one.to, other.to) - Math.max(one.from, other.from);
  const shorter = Math.min(one.to - one.from, other.to - other.from);
  const longer = Math.max(one.to, other.to) - Math.min(one.from, other.from);
  if (shared < 0 || shared < leastShare * shorter || (shared === 0 && shorter > 0)) return null;
  return longer === 0 ? 1 : shared / longer;
}

/** The pairs of two rows of reps that cover each other best over the whole row, in order, each rep at most once. */
function bestPairs(ones: readonly Span[], others: readonly Span[]): ReadonlyMap<number, number> {
  // A touch for the pair itself, so that a rep of no length, marked by its start alone, still finds its partner.
  const worth = ones.map((one) =>
    others.map((other) => {
      const alike = likeness(one, other);
      return alike === null ? null : alike + 0.001;
    }),
  );
  const best = Array.from({ length: ones.length + 1 }, () => new Array<number>(others.length + 1).fill(0));
  const bestFrom = (i: number, j: number): number => best[i]?.[j] ?? 0;
  for (let i = ones.length - 1; i >= 0; i -= 1) {
    for (let j = others.length - 1; j >= 0; j -= 1) {
      const pair = worth[i]?.[j] ?? null;
      const paired = pair === null ? 0 : pair + bestFrom(i + 1, j + 1);
      const row = best[i];
      if (row !== undefined) row[j] = Math.max(paired, bestFrom(i + 1, j), bestFrom(i, j + 1));
    }
  }
  const pairs = new Map<number, number>();
  for (let [i, j] = [0, 0]; i < ones.length && j < others.length; ) {
    if (bestFrom(i, j) === bestFrom(i + 1, j)) i += 1;
    else if (bestFrom(i, j) === bestFrom(i, j + 1)) j += 1;
    else {
      pairs.set(i, j);
      i += 1;
      j += 1;
    }
  }
  return pairs;
}

/** A rep as several reviewers marked it: its index with each of them, null where one did not mark it. */
export type SharedRep = readonly (number | null)[];

/** By number alone, where the times can't be laid beside each other. */
function byNumber(clips: readonly Clip[]): readonly SharedRep[] {
  const numbers = new Set(clips.flatMap(({ reps }) => reps.map(({ index }) => index)));
  return [...numbers]
    .sort((a, b) => a - b)
    .map((number) => clips.map(({ reps }) => (reps.some(({ index }) => index === number) ? number : null)));
}

/**
 * Which reps of one clip are the same in several reviews: those whose times overlap by half of the shorter one or more, in
 * order, so that a rep that somebody left unmarked shifts nobody's numbers. By number where the times can't be compared.
 * @param clips the clip as each review has it
 */
export function pairReps(clips: readonly Clip[]): readonly SharedRep[] {
  const rows = clips.map((clip) => spansOf(clip.reps, clockOf(clip, clips)));
  const shared: { readonly span: Span; readonly indexes: (number | null)[] }[] = [];
  for (const [reviewer, row] of rows.entries()) {
    if (row === null) return byNumber(clips);
    const pairs = bestPairs(
      row,
      shared.map(({ span }) => span),
    );
    const found = row.map((_, at) => shared[pairs.get(at) ?? -1]);
    for (const [at, span] of row.entries()) {
      const known = found[at];
      if (known !== undefined) known.indexes[reviewer] = span.index;
      else shared.push({ span, indexes: clips.map((_, of) => (of === reviewer ? span.index : null)) });
    }
    shared.sort((one, other) => one.span.from - other.span.from);
  }
  return shared.map(({ indexes }) => indexes);
}
