/** The value below which a share of the numbers lies; NaN of none. */
export function quantile(numbers: readonly number[], share: number): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

/** The middle one of the numbers, the upper of two; NaN of none. */
export const median = (numbers: readonly number[]): number => quantile(numbers, 0.5);
