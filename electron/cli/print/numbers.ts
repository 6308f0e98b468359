import type { IntraclassCorrelation } from '../../../engine/agreement/intraclass.ts';
import type { Estimate } from '../../../engine/agreement/kappa.ts';
import { shownCoefficient, shownPercent, shownScore } from '../../../engine/rubric/shownNumbers.ts';

/** A number with at most `digits` decimals and no trailing zeros. */
export function shortNumber(value: number, digits: number): string {
  return new Intl.NumberFormat('en', { maximumFractionDigits: digits, useGrouping: false }).format(value);
}

/** A score with one decimal, as every screen and document shows it. */
export function score(value: number): string {
  return shownScore(value).toFixed(1);
}

/** A share 0-1 as a whole percentage, never rounded up. */
export function percent(share: number): string {
  return `${shownPercent(share)} %`;
}

/** A share 0-1 of agreement as a whole percentage: to the nearest, and 100 only where it is complete. */
export function agreedPercent(share: number): string {
  return `${shortNumber(shownCoefficient(share, 2) * 100, 0)} %`;
}

/** How many there are: "1 clip", "2 clips". */
export function count(number: number, one: string): string {
  return number === 1 ? `1 ${one}` : `${number} ${one}s`;
}

/** A coefficient with three decimals at most; a dash where there is none. */
export function coefficient(value: number | null): string {
  return value === null ? '–' : shortNumber(shownCoefficient(value, 3), 3);
}

/** A coefficient with its interval in brackets, where it has one. */
export function estimate(known: Estimate | null): string {
  if (known === null) return '–';
  const { value, low, high } = known;
  if (low === null || high === null) return coefficient(value);
  return `${coefficient(value)} (${coefficient(low)} to ${coefficient(high)})`;
}

/** Absolute agreement of single scores, with its interval. */
export function absoluteAgreement(intraclass: IntraclassCorrelation): string {
  switch (intraclass.kind) {
    case 'noSpread':
      return 'no spread';
    case 'tooFewToTell':
      return 'too few to tell';
    case 'estimated': {
      const form = intraclass.twoWayRandomSingle;
      return form.kind === 'known' ? estimate(form) : 'too few to tell';
    }
  }
}
