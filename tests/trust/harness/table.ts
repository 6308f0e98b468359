import type { Figure } from './proof.ts';

/** What came of one proof. */
export type Outcome = {
  readonly name: string;
  readonly figures: readonly Figure[];
  readonly tookS: number;
  /** Why it could not be run here; null where it ran. */
  readonly notHere: string | null;
};

export const isHeld = ({ figures, notHere }: Outcome): boolean =>
  notHere === null && figures.every(({ wrong }) => wrong.length === 0);

const count = (n: number): string => n.toLocaleString('en');

/** The figures as a Markdown table. */
export function tableOf(outcomes: readonly Outcome[]): string {
  const lines = outcomes.flatMap(({ name, figures, tookS, notHere }) =>
    notHere === null
      ? figures.map(({ what, tried, found, wrong }, index) => {
          const took = index === 0 ? `${tookS} s` : '';
          return `| ${index === 0 ? name : ''} | ${what} | ${count(tried)} | ${found} | ${count(wrong.length)} | ${took} |`;
        })
      : [`| ${name} | not run here: ${notHere} | 0 | | | |`],
  );
  return [
    '| proof | what was done | times | what was found | wrong | took |',
    '|---|---|---|---|---|---|',
    ...lines,
  ].join('\n');
}
