import type { Clip, Entry, Flag, Rep, Review, Tick } from '../../engine/review/review.ts';

/** Reps 1 to `count`, three seconds each. */
export function reps(count: number): Rep[] {
  return Array.from({ length: count }, (_, i) => ({
    index: i + 1,
    start: { seconds: 3 * i },
    stretchedEnd: { seconds: 3 * i + 1.5 },
    end: { seconds: 3 * i + 2.5 },
  }));
}

/** A clip filmed from the side with five marked reps; change what a test needs. */
export function clip(change: Partial<Clip> = {}): Clip {
  return { id: 'a', name: 'Set 1', view: 'side', realTimeFactor: 1, reps: reps(5), ...change };
}

/** A flag on clip a for the whole set. */
export function flag(change: Partial<Flag> & Pick<Flag, 'criterion' | 'severity'>): Flag {
  return { id: 'f1', clip: 'a', fault: null, reps: 'set', at: { seconds: 1 }, note: '', cue: '', ...change };
}

/** Ticks on clip a, whole set, for each criterion named. */
export function ticks(...criteria: readonly string[]): Tick[] {
  return criteria.map((criterion) => ({ clip: 'a', criterion, reps: 'set' }));
}

export const allSix = ['depth', 'eccentricTempo', 'pauses', 'barPath', 'headPosition', 'spinePosition'] as const;

/** An entry of one clip with nothing judged yet. */
export function entry(change: Partial<Entry> = {}): Entry {
  return { id: 'e1', exercise: 'squat', clips: [clip()], flags: [], ticks: [], ...change };
}

/** A review of the given entries. */
export function review(...entries: readonly Entry[]): Review {
  return {
    format: 'rackside-review',
    version: 4,
    voice: 'coach',
    trainee: { name: 'Robin Vale', goal: 'growth', experience: 'experienced', units: 'kg', minor: false },
    session: { id: 'session', title: '', date: '2025-03-09', notes: '', painNote: '' },
    entries: [...entries],
  };
}
