import type { OpenEntry } from './arrival.ts';

/** An exercise of a plan, and for how many more clips there is a set of it. */
type Slot = { readonly exercise: string; free: number };

/**
 * The exercises of a session in the order of its plan, as clips take their sets. `next` says which exercise the next clip
 * shows: the one of the clip before while a set of it is left, else the next one of the plan; null when all sets are taken.
 */
export class PlanOrder {
  readonly #slots: Slot[];
  #at = 0;

  /** @param clips how many clips are to be shared out */
  constructor(entries: readonly OpenEntry[], clips: number) {
    this.#slots = slotsOf(entries, clips);
  }

  next(): string | null {
    const after = [...this.#slots.slice(this.#at), ...this.#slots.slice(0, this.#at)];
    return after.find(({ free }) => free > 0)?.exercise ?? null;
  }

  /** A clip takes a set of an exercise, whether or not the plan has it. */
  take(exercise: string): void {
    const place = this.#slots.findIndex(
      (slot, index) => slot.exercise === exercise && (slot.free > 0 || index >= this.#at),
    );
    const slot = this.#slots[place];
    if (slot === undefined) return;
    this.#at = place;
    slot.free = Math.max(0, slot.free - 1);
  }
}

/**
 * The sets that are left. Where there are as many clips as exercises that have none yet, one of each was filmed; exercises
 * without a plan share the clips that the planned sets leave.
 */
function slotsOf(entries: readonly OpenEntry[], clips: number): Slot[] {
  const empty = entries.filter((entry) => entry.clips === 0);
  const left = ({ plannedSets, clips }: OpenEntry): number => Math.max(0, (plannedSets ?? 0) - clips);
  const planned = entries.reduce((sum, entry) => sum + left(entry), 0);
  if (empty.length === clips && planned !== clips) {
    return entries.map((entry) => ({ exercise: entry.exercise, free: entry.clips === 0 ? 1 : 0 }));
  }
  const unplanned = empty.filter(({ plannedSets }) => plannedSets === null).length;
  const share = unplanned === 0 ? 0 : Math.max(1, Math.floor((clips - planned) / unplanned));
  return entries.map((entry) => ({
    exercise: entry.exercise,
    free: entry.plannedSets === null && entry.clips === 0 ? share : left(entry),
  }));
}
