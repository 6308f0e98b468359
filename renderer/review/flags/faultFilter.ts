import { create } from 'zustand';
import type { Fault } from '../../../engine/exercises/exercise.ts';

/** How well a fault answers what was typed: lower is better, null = not at all. */
function rank(fault: Fault, words: readonly string[]): number | null {
  const name = fault.name.toLowerCase();
  const nameWords = name.split(/[^\p{L}\p{N}]+/u);
  let worst = 0;
  for (const word of words) {
    if (name.startsWith(word)) continue;
    if (nameWords.some((part) => part.startsWith(word))) worst = Math.max(worst, 1);
    else if (name.includes(word)) worst = Math.max(worst, 2);
    else if (fault.seen.toLowerCase().includes(word)) worst = Math.max(worst, 3);
    else return null;
  }
  return worst;
}

/**
 * A criterion's faults that hold every typed word, best match first; all of them while nothing is typed. Among equal
 * matches those used last come first.
 */
export function filterFaults(
  faults: readonly Fault[],
  criterion: string,
  typed: string,
  recent: readonly string[] = [],
): readonly Fault[] {
  const lastUsed = (id: string): number => (recent.includes(id) ? recent.indexOf(id) : recent.length);
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  return faults
    .filter((fault) => fault.criterion === criterion)
    .map((fault, order) => ({ fault, order, rank: rank(fault, words) }))
    .filter((found): found is { fault: Fault; order: number; rank: number } => found.rank !== null)
    .sort((a, b) => a.rank - b.rank || lastUsed(a.fault.id) - lastUsed(b.fault.id) || a.order - b.order)
    .map(({ fault }) => fault);
}

type RecentFaults = {
  /** Fault ids, the last used first. */
  readonly ids: readonly string[];
  readonly used: (faultId: string) => void;
};

const most = 40;

/** The faults that were named recently; they come first in the list. */
export const recentFaults = create<RecentFaults>()((set) => ({
  ids: [],
  used: (faultId) => set(({ ids }) => ({ ids: [faultId, ...ids.filter((id) => id !== faultId)].slice(0, most) })),
}));
