import { fQuantile } from './fDistribution.ts';
import type { Estimate } from './kappa.ts';

/** Mean squares of a table of targets by judges. */
type MeanSquares = {
  readonly n: number;
  readonly k: number;
  readonly targets: number;
  readonly judges: number;
  readonly error: number;
  readonly within: number;
};

/** The six forms of Shrout & Fleiss, and what a single judge's score is worth in its own unit. */
export type IntraclassCorrelation = {
  /** Judges differ from target to target. */
  readonly oneWaySingle: Estimate;
  /** Judges drawn from many, absolute agreement. */
  readonly twoWayRandomSingle: Estimate;
  /** These judges only, consistency. */
  readonly twoWayMixedSingle: Estimate;
  readonly oneWayMean: Estimate;
  readonly twoWayRandomMean: Estimate;
  readonly twoWayMixedMean: Estimate;
  /** Square root of the error mean square. */
  readonly standardErrorOfMeasurement: number;
  /** Smallest change beyond the noise of two measurements, 95 %. */
  readonly minimalDetectableChange: number;
};

function meanSquaresOf(scores: readonly (readonly number[])[]): MeanSquares {
  const n = scores.length;
  const k = scores[0]?.length ?? 0;
  if (n < 2 || k < 2 || scores.some((row) => row.length !== k)) {
    throw new RangeError('an intraclass correlation needs two targets and two judges or more, and no gaps');
  }
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const grand = mean(scores.flat());
  const targetMeans = scores.map(mean);
  const judgeMeans = Array.from({ length: k }, (_, j) => mean(scores.map((row) => row[j] ?? 0)));
  const square = (values: readonly number[]) => values.reduce((sum, value) => sum + (value - grand) ** 2, 0);
  const total = square(scores.flat());
  const betweenTargets = k * square(targetMeans);
  const betweenJudges = n * square(judgeMeans);
  return {
    n,
    k,
    targets: betweenTargets / (n - 1),
    judges: betweenJudges / (k - 1),
    error: (total - betweenTargets - betweenJudges) / ((n - 1) * (k - 1)),
    within: (total - betweenTargets) / (n * (k - 1)),
  };
}

/** Single and mean form with interval where the ratio of two mean squares decides. */
function fromRatio(ratio: number, k: number, targetDf: number, otherDf: number): { single: Estimate; mean: Estimate } {
  const single = (f: number) => (f - 1) / (f + k - 1);
  const mean = (f: number) => 1 - 1 / f;
  const low = ratio / fQuantile(0.975, targetDf, otherDf);
  const high = ratio * fQuantile(0.975, otherDf, targetDf);
  return {
    single: { value: single(ratio), low: single(low), high: single(high) },
    mean: { value: mean(ratio), low: mean(low), high: mean(high) },
  };
}

function absoluteAgreement({ n, k, targets, judges, error }: MeanSquares): Estimate {
  const value = (targets - error) / (targets + (k - 1) * error + (k * (judges - error)) / n);
  const judgeRatio = judges / error;
  const a = n * (1 + (k - 1) * value) - k * value;
  const df =
    ((k - 1) * (n - 1) * (k * value * judgeRatio + a) ** 2) / ((n - 1) * (k * value * judgeRatio) ** 2 + a ** 2);
  const rest = k * judges + (k * n - k - n) * error;
  const lowF = fQuantile(0.975, n - 1, df);
  const highF = fQuantile(0.975, df, n - 1);
  return {
    value,
    low: (n * (targets - lowF * error)) / (lowF * rest + n * targets),
    high: (n * (highF * targets - error)) / (rest + n * highF * targets),
  };
}

/**
 * Intraclass correlations in six forms with 95 % intervals (Shrout & Fleiss 1979, Psychological Bulletin 86:420).
 * @param scores `scores[t][j]` = judge j's score of target t, no gaps
 * @returns null when there is no error variance to compare with (the judges agree to the point)
 * @throws RangeError with fewer than two targets or judges, or gaps
 */
export function intraclassCorrelation(scores: readonly (readonly number[])[]): IntraclassCorrelation | null {
  const squares = meanSquaresOf(scores);
  const { n, k } = squares;
  if (squares.error < 1e-12 || squares.within < 1e-12) return null;
  const oneWay = fromRatio(squares.targets / squares.within, k, n - 1, n * (k - 1));
  const mixed = fromRatio(squares.targets / squares.error, k, n - 1, (n - 1) * (k - 1));
  const random = absoluteAgreement(squares);
  const stepUp = (single: number | null) => (single === null ? null : (k * single) / (1 + (k - 1) * single));
  const standardError = Math.sqrt(squares.error);
  return {
    oneWaySingle: oneWay.single,
    twoWayRandomSingle: random,
    twoWayMixedSingle: mixed.single,
    oneWayMean: oneWay.mean,
    twoWayRandomMean: {
      value: (squares.targets - squares.error) / (squares.targets + (squares.judges - squares.error) / n),
      low: stepUp(random.low),
      high: stepUp(random.high),
    },
    twoWayMixedMean: mixed.mean,
    standardErrorOfMeasurement: standardError,
    minimalDetectableChange: 1.959963984540054 * Math.SQRT2 * standardError,
  };
}
