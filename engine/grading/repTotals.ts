import { withoutNoise } from '../rubric/mark.ts';
import { weightedMean } from './arithmetic.ts';
import type { EntryGrade } from './grade.ts';

/** The foot of a scorecard column. */
export type RepTotal = { readonly clip: string; readonly rep: number | null; readonly total: number };

/**
 * Per rep (or set without marked reps): mean of its scores over the criteria looked at, weighted by their
 * shares; 0-100, in the order of the clips and reps. Empty while nothing was looked at.
 */
export function repTotals(grade: EntryGrade): RepTotal[] {
  const counted = grade.criteria.filter((criterion) => criterion.lookedAt);
  const [first] = counted;
  if (first === undefined) return [];
  return first.reps.map(({ clip, rep }, column) => {
    const parts = counted.flatMap(({ share, reps }) => {
      const cell = reps[column];
      return cell === undefined ? [] : [{ weight: share, score: cell.score }];
    });
    return { clip, rep, total: withoutNoise(weightedMean(parts)) };
  });
}
