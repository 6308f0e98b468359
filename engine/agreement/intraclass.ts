import { withoutNoise } from '../rubric/rubric.ts';
import { fQuantile } from './fDistribution.ts';
import type { Estimate } from './kappa.ts';

/** Mean squares of a table of targets by judges; what is only noise of the arithmetic is 0. */
type MeanSquares = {
  readonly n: number;
  readonly k: number;
  readonly targets: number;
  readonly judges: number;
  readonly error: number;
  readonly within: number;
};

/**
 * One form of the correlation, from -1 to 1. Too few to tell: the variances of so small a table come out such that the
 * formula leaves that span or divides by nothing.
 */
export type IntraclassForm = ({ readonly kind: 'known' } & Estimate) | { readonly kind: 'tooFewToTell' };

/** The six forms of Shrout & Fleiss, and what a single judge's score is worth in its own unit. */
export type IntraclassForms = {
  /** Judges differ from target to target. */
  readonly oneWaySingle: IntraclassForm;
  /** Judges drawn from many, absolute agreement: a judge who is stricter throughout lowers it. */
  readonly twoWayRandomSingle: IntraclassForm;
  /** These judges only, consistency: a judge may be stricter throughout. */
  readonly twoWayMixedSingle: IntraclassForm;
  readonly oneWayMean: IntraclassForm;
  readonly twoWayRandomMean: IntraclassForm;
  readonly twoWayMixedMean: IntraclassForm;
  /** Square root of the error mean square: what is left when a judge who is stricter throughout is allowed for. */
  readonly standardErrorOfMeasurement: number;
  /** The same with the judges' steady differences in it (de Vet et al. 2006, J Clin Epidemiol 59:1033). */
  readonly standardErrorOfAgreement: number;
  /** Smallest change beyond the noise of two measurements by one judge, 95 %. */
  readonly minimalDetectableChange: number;
};

/**
 * What a table of scores says of its judges' agreement. No spread: each judge gave every target the same score, so nothing
 * tells one target from another. Too few to tell: fewer than two targets.
 */
export type IntraclassCorrelation =
  | ({ readonly kind: 'estimated' } & IntraclassForms)
  | { readonly kind: 'noSpread' }
  | { readonly kind: 'tooFewToTell' };

function meanSquaresOf(scores: readonly (readonly number[])[]): MeanSquares {
  const n = scores.length;
  const k = scores[0]?.length ?? 0;
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const grand = mean(scores.flat());
  const targetMeans = scores.map(mean);
  const judgeMeans = Array.from({ length: k }, (_, j) => mean(scores.map((row) => row[j] ?? 0)));
  const squares = (values: readonly number[]) => values.reduce((sum, value) => sum + value ** 2, 0);
  const residuals = (takenOff: (target: number, judge: number) => number) =>
    squares(
      scores.flatMap((row, t) => row.map((score, j) => score - takenOff(targetMeans[t] ?? 0, judgeMeans[j] ?? 0))),
    );
  const noise = 1e-20 * Math.max(...scores.flat().map((score) => score ** 2));
  const meanSquare = (sum: number, degreesOfFreedom: number) =>
    sum / degreesOfFreedom <= noise ? 0 : sum / degreesOfFreedom;
  return {
    n,
    k,
    targets: meanSquare(k * squares(targetMeans.map((one) => one - grand)), n - 1),
    judges: meanSquare(n * squares(judgeMeans.map((one) => one - grand)), k - 1),
    error: meanSquare(
      residuals((target, judge) => target + judge - grand),
      (n - 1) * (k - 1),
    ),
    within: meanSquare(
      residuals((target) => target),
      n * (k - 1),
    ),
  };
}

const tooFewToTell: IntraclassForm = { kind: 'tooFewToTell' };

const withinSpan = (value: number): number => Math.min(1, Math.max(-1, value));

/** A form whose interval is kept within -1 and 1, and left out where it does not hold the value. */
function form(estimate: number, interval: { readonly low: number; readonly high: number } | null): IntraclassForm {
  const clean = withoutNoise(estimate);
  if (!(clean >= -1 && clean <= 1)) return tooFewToTell;
  const value = withinSpan(estimate);
  if (interval === null) return { kind: 'known', value, low: null, high: null };
  const [low, high] = [withinSpan(interval.low), withinSpan(interval.high)];
  const holds = low <= value && value <= high;
  return holds ? { kind: 'known', value, low, high } : { kind: 'known', value, low: null, high: null };
}

/** Single and mean form where the ratio of two mean squares decides; without an interval where one of them is nothing. */
function fromRatio(
  targets: { readonly square: number; readonly df: number },
  other: { readonly square: number; readonly df: number },
  k: number,
): { single: IntraclassForm; mean: IntraclassForm } {
  if (other.square === 0) return { single: form(1, null), mean: form(1, null) };
  const single = (f: number) => (f - 1) / (f + k - 1);
  const mean = (f: number) => 1 - 1 / f;
  const ratio = targets.square / other.square;
  if (ratio === 0) return { single: form(single(0), null), mean: tooFewToTell };
  const low = ratio / fQuantile(0.975, targets.df, other.df);
  const high = ratio * fQuantile(0.975, other.df, targets.df);
  return {
    single: form(single(ratio), { low: single(low), high: single(high) }),
    mean: form(mean(ratio), { low: mean(low), high: mean(high) }),
  };
}

/** Interval of absolute agreement of single scores; null where the judges agree to the point. */
function absoluteInterval({ n, k, targets, judges, error }: MeanSquares, value: number) {
  const ofJudges = k * value * judges;
  const ofError = (n * (1 + (k - 1) * value) - k * value) * error;
  const df = ((k - 1) * (n - 1) * (ofJudges + ofError) ** 2) / ((n - 1) * ofJudges ** 2 + ofError ** 2);
  if (!(df > 0)) return null;
  const rest = k * judges + (k * n - k - n) * error;
  const lowF = fQuantile(0.975, n - 1, df);
  const highF = fQuantile(0.975, df, n - 1);
  return {
    low: (n * (targets - lowF * error)) / (lowF * rest + n * targets),
    high: (n * (highF * targets - error)) / (rest + n * highF * targets),
  };
}

function absoluteAgreement(squares: MeanSquares): { single: IntraclassForm; mean: IntraclassForm } {
  const { n, k, targets, judges, error } = squares;
  const ofOne = targets + (k - 1) * error + (k * (judges - error)) / n;
  const ofMean = targets + (judges - error) / n;
  const value = ofOne > 0 ? (targets - error) / ofOne : Number.NaN;
  const single = form(value, absoluteInterval(squares, value));
  // Spearman and Brown; at its pole the mean of the judges says nothing any more.
  const stepUp = (one: number) => (1 + (k - 1) * one > 0 ? (k * one) / (1 + (k - 1) * one) : -1);
  const interval =
    single.kind === 'tooFewToTell' || single.low === null || single.high === null
      ? null
      : { low: stepUp(single.low), high: stepUp(single.high) };
  return { single, mean: ofMean > 0 ? form((targets - error) / ofMean, interval) : tooFewToTell };
}

/**
 * Intraclass correlations in six forms with 95 % intervals (Shrout & Fleiss 1979, Psychological Bulletin 86:420). Judges
 * who agree to the point have 1 throughout; judges a steady distance apart have 1 for consistency alone.
 * @param scores `scores[t][j]` = judge j's score of target t, no gaps
 * @throws RangeError with gaps, or with fewer than two judges
 */
export function intraclassCorrelation(scores: readonly (readonly number[])[]): IntraclassCorrelation {
  const k = scores[0]?.length ?? 2;
  if (k < 2 || scores.some((row) => row.length !== k)) {
    throw new RangeError('an intraclass correlation needs two judges or more, and no gaps');
  }
  if (scores.length < 2) return { kind: 'tooFewToTell' };
  const squares = meanSquaresOf(scores);
  const { n, targets, judges, error, within } = squares;
  if (targets === 0 && error === 0) return { kind: 'noSpread' };
  const ofTargets = { square: targets, df: n - 1 };
  const oneWay = fromRatio(ofTargets, { square: within, df: n * (k - 1) }, k);
  const mixed = fromRatio(ofTargets, { square: error, df: (n - 1) * (k - 1) }, k);
  const random = absoluteAgreement(squares);
  const standardError = Math.sqrt(error);
  return {
    kind: 'estimated',
    oneWaySingle: oneWay.single,
    twoWayRandomSingle: random.single,
    twoWayMixedSingle: mixed.single,
    oneWayMean: oneWay.mean,
    twoWayRandomMean: random.mean,
    twoWayMixedMean: mixed.mean,
    standardErrorOfMeasurement: standardError,
    standardErrorOfAgreement: Math.sqrt(error + Math.max(0, (judges - error) / n)),
    minimalDetectableChange: 1.959963984540054 * Math.SQRT2 * standardError,
  };
}
