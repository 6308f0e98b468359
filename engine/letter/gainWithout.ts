import type { Catalogue } from '../exercises/catalogue.ts';
import { gradeSession } from '../grading/gradeSession.ts';
import type { Review, Tick } from '../review/review.ts';
import { withoutNoise } from '../rubric/rubric.ts';

/** The review without some flags; what they judged still counts as looked at, and as fine. */
function without(review: Review, flagIds: ReadonlySet<string>): Review {
  return {
    ...review,
    entries: review.entries.map((entry) => {
      const gone = entry.flags.filter(({ id }) => flagIds.has(id));
      if (gone.length === 0) return entry;
      const ticks = gone.map(({ clip, criterion, reps }): Tick => ({ clip, criterion, reps }));
      return {
        ...entry,
        flags: entry.flags.filter(({ id }) => !flagIds.has(id)),
        ticks: [...entry.ticks, ...ticks],
      };
    }),
  };
}

/**
 * Points that a session's grade would gain if some flags were all gone together, their criteria still looked at; 0 where
 * either has no grade. Grades set by hand and caps hold as they do in the grade itself.
 */
export function gainWithout(review: Review, catalogue: Catalogue): (flagIds: ReadonlySet<string>) => number {
  const scoreOf = (one: Review): number | null => {
    const { state } = gradeSession(one, catalogue);
    return state.kind === 'none' ? null : state.score;
  };
  const now = scoreOf(review);
  return (flagIds) => {
    const then = scoreOf(without(review, flagIds));
    return now === null || then === null ? 0 : Math.max(0, withoutNoise(then - now));
  };
}
