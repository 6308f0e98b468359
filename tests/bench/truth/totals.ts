import { type Compared, type Edge, edges, type Told } from './compare.ts';

/** Errors of many clips as one line says them. */
export type Totals = {
  readonly expected: number;
  readonly right: number;
  readonly missed: number;
  readonly invented: number;
  readonly edges: Readonly<Record<Edge | 'all', Spread>>;
  /** Errors of phases and pauses in seconds. */
  readonly phases: Spread;
  /** Errors in percent. */
  readonly range: Spread;
  readonly peakSpeed: Spread;
  /** Share of numbers whose truth lies within their half-width; null without numbers. */
  readonly cover: number | null;
};

/** Sizes of errors; NaN without any. */
export type Spread = {
  readonly count: number;
  readonly median: number;
  readonly p90: number;
  readonly p95: number;
  readonly max: number;
};

/** The errors of some clips taken together. */
export function totalsOf(compared: readonly Compared[]): Totals {
  const told = compared.flatMap((one) => one.told);
  const late = (edge: Edge) => spreadOf(compared.flatMap(({ edgesS }) => edgesS[edge]));
  const right = sum(compared.map(({ pairs }) => pairs.length));
  const missed = sum(compared.map((one) => one.missed.length));
  return {
    ...{ expected: right + missed, right, missed },
    invented: sum(compared.map((one) => one.invented.length)),
    edges: {
      ...{ start: late('start'), turn: late('turn'), end: late('end') },
      all: spreadOf(compared.flatMap(({ edgesS }) => edges.flatMap((edge) => edgesS[edge]))),
    },
    phases: spreadOf(told.filter(({ what }) => what.endsWith(' s')).map(errorOf)),
    range: spreadOf(told.filter(({ what }) => what === 'range m').map(percentOf)),
    peakSpeed: spreadOf(told.filter(({ what }) => what === 'peak speed m/s').map(percentOf)),
    cover: told.length === 0 ? null : told.filter(isCovered).length / told.length,
  };
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
const errorOf = ({ told, truth }: Told) => told.value - truth;
const percentOf = ({ told, truth }: Told) => (100 * (told.value - truth)) / truth;

/** Whether the truth lies within a number's half-width. */
export const isCovered = ({ told, truth }: Told): boolean => Math.abs(told.value - truth) <= told.plusMinus;

function spreadOf(errors: readonly number[]): Spread {
  const sizes = errors.map(Math.abs).sort((one, other) => one - other);
  const at = (share: number) => sizes[Math.min(sizes.length - 1, Math.floor(share * sizes.length))] ?? Number.NaN;
  return { count: sizes.length, median: at(0.5), p90: at(0.9), p95: at(0.95), max: sizes.at(-1) ?? Number.NaN };
}
