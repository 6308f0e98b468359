/** One figure of a bench: a ratio taken in this run, and the most it should be. */
export type Figure = { readonly what: string; readonly ratio: number; readonly goal: number };

/** A bench: what it compares, and how. Figures are ratios, so that they mean the same on any machine. */
export type Bench = {
  readonly name: string;
  readonly about: string;
  /** `options`: what follows the benches' names on the command line. */
  readonly run: (options: readonly string[]) => Promise<readonly Figure[]>;
};

/** The middle of some durations. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Milliseconds that something takes. */
export async function timed(work: () => unknown): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}
