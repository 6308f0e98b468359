import type { Figure } from './proof.ts';

/** What came of one proof. */
export type Outcome = {
  readonly name: string;
  readonly figures: readonly Figure[];
  readonly tookS: number;
  /** Why it could not be run here; null where it ran. */
  readonly notHere: string | null;
};

/** Whether nothing is wrong. What a machine can't run fails the whole run, and is told by the short one. */
export const isHeld = ({ figures, notHere }: Outcome, long: boolean): boolean =>
  notHere === null ? figures.every(({ wrong }) => wrong.length === 0) : !long;

const count = (n: number): string => n.toLocaleString('en');

const head = ['| proof | what was done | times | what was found | wrong | run |', '|---|---|---|---|---|---|'];

/** The lines of a proof in the table; `run` tells when and how it was run. */
export function linesOf({ name, figures, tookS, notHere }: Outcome, run: string): string[] {
  if (notHere !== null) return [`| ${name} | not run here: ${notHere} | 0 | | | ${run} |`];
  return figures.map(({ what, tried, found, wrong }, index) => {
    const [proof, when] = index === 0 ? [name, `${run}, ${count(tookS)} s`] : ['', ''];
    return `| ${proof} | ${what} | ${count(tried)} | ${found} | ${count(wrong.length)} | ${when} |`;
  });
}

/** The lines of all proofs as one table of Markdown. */
export const tableOf = (lines: readonly string[]): string => [...head, ...lines].join('\n');

/** The lines of each proof in a table that was written before. */
export function linesByProof(table: string): Map<string, string[]> {
  const found = new Map<string, string[]>();
  let last = '';
  for (const line of table.split('\n')) {
    if (!line.startsWith('| ') || head.includes(line)) continue;
    last = /^\| ([^|]*) \|/.exec(line)?.[1]?.trim() || last;
    found.set(last, [...(found.get(last) ?? []), line]);
  }
  return found;
}
