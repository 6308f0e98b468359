import type { Exercise } from '../../exercises/exercise.ts';
import type { Curve } from './curve.ts';
import type { Cycle } from './cycles.ts';
import { fade } from './fade.ts';
import type { RangeLimits } from './rangeLimits.ts';

export type Kind = { readonly begins: 'eccentric' | 'concentric'; readonly limits: RangeLimits };

/** The way that a lift is about: up, but for a pulldown. A rep without it is none. */
export const workRange = ({ outRange, backRange }: Cycle, begins: Exercise['beginsWith']): number =>
  begins === 'concentric' ? outRange : backRange;

/** Two ways that differ by the first share of the longer one make a cycle; by the second they do not. */
const closure = { full: 0.2, none: 0.5 } as const;
/** Where one rep ends and the next begins differs by these shares of their range at most, … */
const joint = { full: 0.25, none: 0.6 } as const;
/** … and their ranges by these shares of the larger. */
const unlike = { full: 0.35, none: 0.65 } as const;
/** Less alike than this are none of a kind. */
const leastLike = 0.25;
/** A single cycle has nothing that it is like. */
const alone = 0.5;
/** A cycle whose way back was cut off by the clip's end, or whose start lies elsewhere than the others'. */
const incomplete = 0.8;
/** A larger movement between two, in their range: then they are what happens between reps, not reps. */
const largestBetween = 1.5;
/** How far beyond the most believable a range may be measured. */
const beyondMost = 1.3;

export const believable = (range: number, { least, most }: RangeLimits): number =>
  range < least ? 0 : most === null ? 1 : fade(range / most, 1, beyondMost);

type Link = { readonly cycle: Cycle; readonly weight: number; readonly range: number; readonly onlyFirst: boolean };

/** What a cycle says for itself: how far it goes, out and back to where it began. */
function linksOf(cycle: Cycle, { begins, limits }: Kind): Link[] {
  const { outRange, backRange, cutAtStart, cutAtEnd } = cycle;
  if (cutAtStart) return [];
  const size = believable(Math.max(outRange, backRange), limits);
  if (cutAtEnd) {
    if (begins === 'eccentric' || cycle.cutOnWayOut) return [];
    return [{ cycle, weight: incomplete * outRange * size, range: outRange, onlyFirst: false }];
  }
  const open = Math.abs(outRange - backRange) / Math.max(outRange, backRange);
  const whole = {
    cycle,
    weight: Math.min(outRange, backRange) * fade(open, closure.full, closure.none) * size,
    range: (outRange + backRange) / 2,
    onlyFirst: false,
  };
  // The first rep of a set may begin elsewhere than it ends: the bar on the shoulders, then overhead.
  const fromElsewhere = { cycle, weight: incomplete * backRange * size, range: backRange, onlyFirst: true };
  const links = begins === 'eccentric' && outRange < backRange ? [whole, fromElsewhere] : [whole];
  return links.filter(({ weight }) => weight > 0);
}

/**
 * The reps of a curve: of all chains of cycles one after the other, each like the one before it in range and beginning where
 * that one ended, the one that explains most of the load's way. Walking out, un-racking and putting down end at other levels
 * or are shorter; a hitch within a rep is a shorter cycle than the rep.
 */
export function bestChain(curve: Curve, cycles: readonly Cycle[], kind: Kind): Cycle[] {
  const links = cycles.flatMap((cycle) => linksOf(cycle, kind)).sort((one, other) => one.cycle.from - other.cycle.from);
  const best = links.map(({ weight, onlyFirst }) => ({ score: onlyFirst ? 0 : alone * weight, before: -1 }));
  links.forEach((link, index) => {
    for (const [next, like] of followers(curve, links, index)) {
      const after = links[next];
      const own = best[index];
      const theirs = best[next];
      if (!after || !own || !theirs || after.onlyFirst) continue;
      // Two that are alike speak for each other.
      const forFirst = own.before === -1 ? (link.onlyFirst ? 1 : 1 - alone) * link.weight : 0;
      const score = own.score + like * (after.weight + forFirst);
      if (score > theirs.score) best[next] = { score, before: index };
    }
  });
  const last = best.reduce((most, { score }, index) => (score > (best[most]?.score ?? 0) ? index : most), -1);
  const chain: Cycle[] = [];
  for (let at = last; at >= 0; at = best[at]?.before ?? -1) {
    const link = links[at];
    if (link) chain.unshift(link.cycle);
  }
  return chain;
}

/** The links that may follow one, with how like it they are, 0-1. */
function followers(curve: Curve, links: readonly Link[], index: number): (readonly [number, number])[] {
  const link = links[index];
  if (!link) return [];
  const { cycle } = link;
  const endsAt = cycle.to ?? cycle.lastSeen;
  const home = curve.values[cycle.to ?? cycle.from] ?? 0;
  const found: (readonly [number, number])[] = [];
  let seenTo = endsAt;
  let furthest = 0;
  for (let next = index + 1; next < links.length; next += 1) {
    const other = links[next];
    if (!other || other.cycle.from < endsAt) continue;
    for (; seenTo < other.cycle.from; seenTo += 1) {
      furthest = Math.max(furthest, Math.abs((curve.values[seenTo] ?? home) - home));
    }
    const range = Math.max(link.range, other.range);
    if (furthest > largestBetween * range) continue;
    const apart = Math.abs((curve.values[other.cycle.from] ?? home) - home) / range;
    const differs = 1 - Math.min(link.range, other.range) / range;
    const like = fade(apart, joint.full, joint.none) * fade(differs, unlike.full, unlike.none);
    if (like >= leastLike) found.push([next, like]);
  }
  return found;
}
