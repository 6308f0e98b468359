import type { Bench } from './bench.ts';
import type { Report } from './report.ts';

/** One story told to the real app, as named checks in order. */
export type Scenario = {
  readonly name: string;
  readonly run: (bench: Bench, report: Report) => Promise<void>;
};
