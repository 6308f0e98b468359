import type { Rubric } from './rubric.ts';

/** A score with its mark (`A+` to `F`) and grade points: what a grade says in short. */
export type MarkedScore = { readonly score: number; readonly mark: string; readonly gradePoints: number };

/**
 * Takes off what binary arithmetic adds: the nearest multiple of 1e-9, so that 92.99999999999999 is 93.
 * Every comparison of a score or a coverage with a threshold of the rubric goes through here.
 */
export function withoutNoise(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}

/**
 * The mark of a score from 0 to 100. The score itself is compared with the rubric's steps, never a rounded
 * one: 89.9 is a B+ and 90 an A-. Only arithmetic noise under one billionth of a point is forgiven.
 */
export function markFor(score: number, rubric: Rubric): MarkedScore {
  if (!(score >= 0 && score <= 100)) throw new RangeError('A score lies between 0 and 100.');
  const clean = withoutNoise(score);
  const step = rubric.letters.find((known) => clean >= known.from);
  if (step === undefined) throw new RangeError('The rubric has no mark down to 0.');
  return { score, mark: step.letter, gradePoints: step.gradePoints };
}

/**
 * A score as people read it: one decimal, rounded down, so that a printed score never reaches a letter that the score
 * itself did not (89.97 reads 89.9 beside its B+). Every screen, command and document shows scores this way.
 */
export function shownScore(score: number): number {
  return Math.floor(withoutNoise(score * 10)) / 10;
}
