import { withoutNoise } from './rubric.ts';

/*
 * How people read a number: never rounded up to a bound that it did not reach. A score and a share of what was looked at
 * have bounds anywhere (marks, a full grade), so they are rounded down; a figure of agreement is bounded by 1 alone.
 * Every screen, command and document shows numbers through here.
 */

/** Rounded down to so many decimals, once the noise of the arithmetic is off. */
function roundedDown(value: number, decimals: number): number {
  const step = 10 ** decimals;
  return Math.floor(withoutNoise(value * step)) / step;
}

/** A score with one decimal: 89.97 reads 89.9 beside its B+. */
export const shownScore = (score: number): number => roundedDown(score, 1);

/** A score of a rep in whole points. */
export const shownWholeScore = (score: number): number => roundedDown(score, 0);

/** A share, 0-1, in whole per cent: 199 of 200 is 99, and 0.596 is 59, short of the 60 that a full grade takes. */
export const shownPercent = (share: number): number => roundedDown(share * 100, 0);

/** Points that a score would gain, so that the score and its gain, added up as they are shown, promise no further mark. */
export const shownGain = (points: number, decimals: number): number => roundedDown(points, decimals);

/**
 * A coefficient or share of agreement, from -1 to 1, rounded to the nearest as such figures are published; but 1 and -1
 * are kept for agreement that is complete. Never minus nothing.
 */
export function shownCoefficient(value: number, decimals: number): number {
  const step = 10 ** decimals;
  const clean = withoutNoise(value);
  const nearest = Math.round(Math.abs(clean) * step);
  const size = nearest >= step && Math.abs(clean) < 1 ? step - 1 : nearest;
  return size === 0 ? 0 : (Math.sign(clean) * size) / step;
}
