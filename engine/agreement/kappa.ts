/** An estimate with its 95 % interval; `low` and `high` null where too little data gives none. */
export type Estimate = { readonly value: number; readonly low: number | null; readonly high: number | null };

export type KappaWeights = 'plain' | 'linear' | 'quadratic';

/** 97.5 % point of the standard normal distribution. */
const normal975 = 1.959963984540054;

/** Square table of counts: `table[i][j]` = items that the first rater put in category i and the second in j. */
export type CountTable = readonly (readonly number[])[];

/**
 * Counts two raters' categories into a square table.
 * @param pairs categories 0 … categories − 1, first rater then second
 */
export function countPairs(pairs: readonly (readonly [number, number])[], categories: number): CountTable {
  const table = Array.from({ length: categories }, () => new Array<number>(categories).fill(0));
  for (const [first, second] of pairs) {
    const row = table[first];
    if (row === undefined || row[second] === undefined) throw new RangeError(`category outside 0-${categories - 1}`);
    row[second] += 1;
  }
  return table;
}

type Shares = { readonly n: number; readonly cell: number[][]; readonly row: number[]; readonly column: number[] };

function sharesOf(table: CountTable): Shares {
  const n = table.reduce((sum, row) => sum + row.reduce((a, b) => a + b, 0), 0);
  const cell = table.map((row) => row.map((count) => count / n));
  const row = cell.map((shares) => shares.reduce((a, b) => a + b, 0));
  const column = cell.map((_, j) => cell.reduce((sum, shares) => sum + (shares[j] ?? 0), 0));
  return { n, cell, row, column };
}

/** Share of items both raters put in the same category, 0-1; null without items. */
export function percentAgreement(table: CountTable): number | null {
  const { n, cell } = sharesOf(table);
  return n === 0 ? null : cell.reduce((sum, shares, i) => sum + (shares[i] ?? 0), 0);
}

function agreementWeight(kind: KappaWeights, i: number, j: number, categories: number): number {
  if (i === j) return 1;
  switch (kind) {
    case 'plain':
      return 0;
    case 'linear':
      return 1 - Math.abs(i - j) / (categories - 1);
    case 'quadratic':
      return 1 - ((i - j) / (categories - 1)) ** 2;
  }
}

/**
 * Cohen's kappa, plain or weighted, with its large-sample 95 % interval (Fleiss, Cohen & Everitt 1969,
 * Psychological Bulletin 72:323). Null without items, or when chance agreement is complete (all in one category).
 */
export function cohenKappa(
  table: CountTable,
  kind: KappaWeights = 'plain',
): (Estimate & { readonly standardError: number }) | null {
  const { n, cell, row, column } = sharesOf(table);
  if (n === 0) return null;
  const categories = table.length;
  const weight = cell.map((_, i) => cell.map((__, j) => agreementWeight(kind, i, j, categories)));
  const sumOver = (term: (i: number, j: number) => number) =>
    cell.reduce((sum, shares, i) => sum + shares.reduce((inner, _, j) => inner + term(i, j), 0), 0);
  const at = (matrix: number[][], i: number, j: number) => matrix[i]?.[j] ?? 0;

  const observed = sumOver((i, j) => at(weight, i, j) * at(cell, i, j));
  const expected = sumOver((i, j) => at(weight, i, j) * (row[i] ?? 0) * (column[j] ?? 0));
  if (1 - expected < 1e-12) return null;
  const value = (observed - expected) / (1 - expected);

  const rowMean = weight.map((weights) => weights.reduce((sum, w, j) => sum + w * (column[j] ?? 0), 0));
  const columnMean = column.map((_, j) =>
    weight.reduce((sum, weights, i) => sum + (weights[j] ?? 0) * (row[i] ?? 0), 0),
  );
  const spread = sumOver(
    (i, j) => at(cell, i, j) * (at(weight, i, j) - ((rowMean[i] ?? 0) + (columnMean[j] ?? 0)) * (1 - value)) ** 2,
  );
  const variance = (spread - (value - expected * (1 - value)) ** 2) / (n * (1 - expected) ** 2);
  const standardError = Math.sqrt(Math.max(0, variance));
  return {
    value,
    standardError,
    low: Math.max(-1, value - normal975 * standardError),
    high: Math.min(1, value + normal975 * standardError),
  };
}

/**
 * Gwet's AC1: agreement beyond chance that stays steady when one category is rare
 * (Gwet 2008, British Journal of Mathematical and Statistical Psychology 61:29). Null without items.
 */
export function gwetAc1(table: CountTable): number | null {
  const { n, cell, row, column } = sharesOf(table);
  if (n === 0) return null;
  const observed = cell.reduce((sum, shares, i) => sum + (shares[i] ?? 0), 0);
  const mean = row.map((share, i) => (share + (column[i] ?? 0)) / 2);
  const chance = mean.reduce((sum, share) => sum + share * (1 - share), 0) / (table.length - 1);
  return (observed - chance) / (1 - chance);
}
