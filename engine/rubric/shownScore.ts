import { withoutNoise } from './mark.ts';

/**
 * A score as people read it: one decimal, rounded down, so that a printed score never reaches a letter that the score
 * itself did not (89.97 reads 89.9 beside its B+). Every screen, command and document shows scores this way.
 */
export function shownScore(score: number): number {
  return Math.floor(withoutNoise(score * 10)) / 10;
}
