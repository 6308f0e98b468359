export type MeasurementLevel = 'nominal' | 'ordinal' | 'interval' | 'ratio';

type Coincidences = {
  readonly values: readonly number[];
  readonly matrix: number[][];
  readonly totals: number[];
  readonly n: number;
};

function countCoincidences(units: readonly (readonly number[])[]): Coincidences {
  const values = [...new Set(units.flat())].sort((a, b) => a - b);
  const place = new Map(values.map((value, i) => [value, i]));
  const matrix = values.map(() => new Array<number>(values.length).fill(0));
  for (const unit of units) {
    for (const [i, first] of unit.entries()) {
      for (const [j, second] of unit.entries()) {
        const row = matrix[place.get(first) ?? -1];
        const column = place.get(second) ?? -1;
        if (i !== j && row?.[column] !== undefined) row[column] += 1 / (unit.length - 1);
      }
    }
  }
  const totals = matrix.map((row) => row.reduce((a, b) => a + b, 0));
  return { values, matrix, totals, n: totals.reduce((a, b) => a + b, 0) };
}

function squaredDistance(level: MeasurementLevel, { values, totals }: Coincidences, i: number, j: number): number {
  if (i === j) return 0;
  const a = values[i] ?? 0;
  const b = values[j] ?? 0;
  switch (level) {
    case 'nominal':
      return 1;
    case 'ordinal': {
      const [low, high] = i < j ? [i, j] : [j, i];
      const between = totals.slice(low, high + 1).reduce((sum, total) => sum + total, 0);
      return (between - ((totals[low] ?? 0) + (totals[high] ?? 0)) / 2) ** 2;
    }
    case 'interval':
      return (a - b) ** 2;
    case 'ratio':
      return a + b === 0 ? 0 : ((a - b) / (a + b)) ** 2;
  }
}

/**
 * Krippendorff's alpha for any number of raters with missing ratings
 * (Krippendorff 2011, "Computing Krippendorff's Alpha-Reliability").
 * @param ratings `ratings[r][u]` = rater r's value for unit u, null = missing
 * @returns null when no unit was rated twice, or all pairable values are the same
 */
export function krippendorffAlpha(
  ratings: readonly (readonly (number | null)[])[],
  level: MeasurementLevel,
): number | null {
  const unitCount = Math.max(0, ...ratings.map((row) => row.length));
  const units = Array.from({ length: unitCount }, (_, unit) =>
    ratings.flatMap((row) => {
      const value = row[unit];
      return value === null || value === undefined ? [] : [value];
    }),
  ).filter((unit) => unit.length > 1);
  const coincidences = countCoincidences(units);
  const { matrix, totals, n } = coincidences;
  let observed = 0;
  let expected = 0;
  for (const [i, row] of matrix.entries()) {
    for (const [j, count] of row.entries()) {
      const distance = squaredDistance(level, coincidences, i, j);
      observed += count * distance;
      expected += (totals[i] ?? 0) * (totals[j] ?? 0) * distance;
    }
  }
  return expected === 0 ? null : 1 - ((n - 1) * observed) / expected;
}
