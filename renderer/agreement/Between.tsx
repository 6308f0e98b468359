import type { Estimate } from '../../engine/agreement/kappa.ts';
import { share } from '../base/figures.ts';

/** A figure between -1 and 1 with two decimals; a dash where there is none. */
export function two(value: number | null | undefined): string {
  if (value === null || value === undefined) return '–';
  const words = value.toFixed(2);
  return words === '-0.00' ? '0.00' : words.replace('-', '−');
}

type Interval = { readonly low: number; readonly high: number } | null;

/** An estimate, and softly the interval it lies in; without one where there is too little to tell. */
export function Between({ estimate }: { readonly estimate: Estimate | null | undefined }) {
  if (estimate === null || estimate === undefined) return <>–</>;
  const { value, low, high } = estimate;
  return (
    <>
      {two(value)}
      {low !== null && high !== null && (
        <span className="soft interval">
          {two(low)} to {two(high)}
        </span>
      )}
    </>
  );
}

/** A share as a percentage, with its interval. */
export function ShareBetween({ value, interval }: { readonly value: number | null; readonly interval: Interval }) {
  if (value === null) return <>–</>;
  return (
    <>
      {share(value)}
      {interval !== null && (
        <span className="soft interval">
          {share(interval.low)} to {share(interval.high)}
        </span>
      )}
    </>
  );
}
