import type { EntryGrade, SessionGrade } from './grade.ts';

type Ends = { readonly low: number; readonly high: number };

/** What people read as one figure: points are told to a tenth. */
const exactWithin = 0.05;

/**
 * Between what a grade lies once everything is looked at, as it is told beside its score; null where there is no grade or
 * it is exact to a tenth. The score itself lies within: where what was seen is poorer than the rubric takes the rest
 * to be, the lower end is the score.
 */
export function toldRange({ state, range }: Pick<EntryGrade | SessionGrade, 'state' | 'range'>): Ends | null {
  if (state.kind === 'none' || range === null) return null;
  const [low, high] = [Math.min(range.low, state.score), Math.max(range.high, state.score)];
  return high - low < exactWithin ? null : { low, high };
}
