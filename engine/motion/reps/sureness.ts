import type { RepDoubt } from '../measurement.ts';
import { median } from '../signal/quantile.ts';
import { believable, type Kind, workRange } from './chain.ts';
import type { Curve } from './curve.ts';
import type { Cycle } from './cycles.ts';
import { fade } from './fade.ts';

/** How sure it is that a cycle is a rep, 0-1, and what speaks against it. */
export type Judgement = { readonly sureness: number; readonly doubts: readonly RepDoubt[] };

/** What a cycle is held against. */
export type Evidence = {
  readonly curve: Curve;
  readonly kind: Kind;
  /** Cycles that belong together; the one judged may be among them. */
  readonly chain: readonly Cycle[];
  /** Share of a stretch's frames in which the load was seen, 0-1. */
  readonly seenShare: (fromIndex: number, toIndex: number) => number;
  /** Whether the hands move as in a gesture in a stretch, and not as in the lift. */
  readonly isGesture: (fromIndex: number, toIndex: number) => boolean;
};

/** Each doubt takes from the sureness between `full`, where there is none, and `none`, where it leaves the least. */
const limits = {
  range: { full: 0.3, none: 0.6, least: 0.15 },
  beyond: { full: 0.35, none: 1, least: 0.2 },
  open: { full: 0.2, none: 0.6, least: 0.15 },
  height: { full: 0.3, none: 0.6, least: 0.2 },
  sway: { full: 0, none: 0.6, least: 0.5 },
  seen: { full: 0.4, none: 0.8, least: 0.3 },
  travel: { full: 0.3, none: 0.7, least: 0.3 },
} as const;
/** Nothing to compare with, and no way back seen, make a rep this sure at most. */
const aloneIs = 0.8;
const cutIs = 0.8;
const cutBeforeWorkIs = 0.3;
const gestureIs = 0.3;

const leaves = (value: number, { full, none, least }: { full: number; none: number; least: number }): number =>
  least + (1 - least) * fade(value, full, none);

/** Judges a cycle by its likeness to the chain, by its size, and by how much of it was seen. */
export function judge(cycle: Cycle, { curve, kind, chain, seenShare, isGesture }: Evidence): Judgement {
  const doubts: RepDoubt[] = [];
  let sureness = 1;
  const doubt = (left: number, why: RepDoubt) => {
    sureness *= left;
    if (left < 0.75) doubts.push(why);
  };
  const others = chain.filter((other) => other !== cycle);
  const isMember = others.length < chain.length;
  const { outRange, backRange } = cycle;
  const whole = Math.max(outRange, backRange);
  const range = wholeWay(cycle, kind);
  if (others.length === 0) sureness *= aloneIs;
  else {
    const usual = median(chain.map((other) => workRange(other, kind.begins)));
    doubt(leaves(1 - range / usual, limits.range), isShortOfTop(cycle, kind) ? 'failed' : 'short');
    doubt(leaves(range / usual - 1, limits.beyond), whenOf(cycle, chain));
    doubt(
      leaves(heightApart(curve, cycle, others) / usual, limits.height),
      isMember ? 'otherHeight' : whenOf(cycle, chain),
    );
  }
  if (!cycle.cutAtEnd && !cycle.cutAtStart) {
    const open = 1 - Math.min(outRange, backRange) / whole;
    const isOpenFirst = isMember && cycle === chain[0] && others.length > 0;
    if (!isOpenFirst) doubt(leaves(open, limits.open), backRange < outRange ? 'failed' : 'otherHeight');
  }
  doubt(believable(whole, kind.limits), 'otherHeight');
  doubt(leaves(1 - (range / kind.limits.least - 1), limits.sway), 'nearSway');
  doubt(leaves(1 - seenShare(cycle.from, cycle.to ?? cycle.lastSeen), limits.seen), 'poorlySeen');
  if (isGesture(cycle.from, cycle.to ?? cycle.lastSeen)) doubt(gestureIs, 'gesture');
  if (cycle.cutAtStart) doubt(cutBeforeWorkIs, 'cutOffAtStart');
  if (cycle.cutAtEnd) {
    const isWhole = kind.begins === 'concentric' && !cycle.cutOnWayOut;
    sureness *= isWhole ? cutIs : cutBeforeWorkIs;
    doubts.push('cutOffAtEnd');
  }
  return { sureness, doubts: [...new Set(doubts)] };
}

/** The way back ends between these shares of the way out. */
const givenUp = { from: 0.15, to: 0.7 } as const;
const isGivenUp = ({ outRange, backRange, cutAtEnd }: Cycle, { begins }: Kind): boolean =>
  begins === 'eccentric' && !cutAtEnd && backRange >= givenUp.from * outRange && backRange <= givenUp.to * outRange;

/** The way by which a cycle is held against others: one that was seen whole, in a lift that was given up the way down. */
function wholeWay(cycle: Cycle, kind: Kind): number {
  if (cycle.cutAtEnd || isGivenUp(cycle, kind)) return cycle.outRange;
  return cycle.cutAtStart ? cycle.backRange : workRange(cycle, kind.begins);
}

/** A lift that begins with its work and came back before it was done. */
const isShortOfTop = ({ cutAtEnd }: Cycle, { begins }: Kind): boolean => begins === 'concentric' && !cutAtEnd;

/** What a movement before, among or after the reps may be. */
function whenOf(cycle: Cycle, chain: readonly Cycle[]): RepDoubt {
  const [first, last] = [chain[0], chain.at(-1)];
  if (first && cycle.far < first.from) return 'maybeSetUp';
  return last && cycle.far > (last.to ?? last.far) ? 'maybePutDown' : 'otherHeight';
}

/** How far the start and the end of a cycle lie from where the nearest others begin and end. */
function heightApart(curve: Curve, cycle: Cycle, others: readonly Cycle[]): number {
  const heightAt = (index: number) => curve.values[index] ?? 0;
  const before = others.findLast((other) => other.far < cycle.far);
  const after = others.find((other) => other.far > cycle.far);
  const start = heightAt(cycle.from);
  const end = cycle.to === null || cycle.cutAtEnd ? start : heightAt(cycle.to);
  const apart: number[] = [];
  if (before) apart.push(Math.abs(start - heightAt(before.to ?? before.from)));
  if (after) apart.push(Math.abs(end - heightAt(after.from)));
  return Math.max(...apart);
}

/** How much of what the load travels, from the first of a chain to its last, the chain leaves unexplained, as sureness. */
export function explains(chain: readonly Cycle[], travel: (from: number, to: number) => number): number {
  const [first, last] = [chain[0], chain.at(-1)];
  if (!first || !last) return 0;
  const all = travel(first.from, last.to ?? last.lastSeen);
  const own = chain.reduce((sum, { from, to, lastSeen }) => sum + travel(from, to ?? lastSeen), 0);
  return all > 0 ? leaves(1 - own / all, limits.travel) : 1;
}
