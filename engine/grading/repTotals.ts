import { asOneCamera } from '../review/camerasOfSet.ts';
import type { Entry } from '../review/review.ts';
import { withoutNoise } from '../rubric/rubric.ts';
import { weightedMean } from './arithmetic.ts';
import type { EntryGrade } from './grade.ts';
import { unitsOf } from './units.ts';

/** The foot of a scorecard column. */
export type RepTotal = { readonly clip: string; readonly rep: number | null; readonly total: number };

const keyOf = (clip: string, rep: number | null): string => JSON.stringify([clip, rep]);

/**
 * Per rep (or set without marked reps): mean of its scores over the criteria that were looked at in it, weighted by their
 * shares; 0-100, in the order of the clips and reps. A rep that nobody looked at has none.
 */
export function repTotals(entry: Entry, grade: EntryGrade): RepTotal[] {
  const parts = new Map<string, { weight: number; score: number }[]>();
  for (const { share, reps } of grade.criteria) {
    for (const { clip, rep, score } of reps) {
      const key = keyOf(clip, rep);
      parts.set(key, [...(parts.get(key) ?? []), { weight: share, score }]);
    }
  }
  return unitsOf(asOneCamera(entry)).flatMap(({ clip, rep }) => {
    const own = parts.get(keyOf(clip, rep));
    return own === undefined ? [] : [{ clip, rep, total: withoutNoise(weightedMean(own)) }];
  });
}
