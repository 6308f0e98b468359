import type { Command } from 'commander';
import { alignReviews } from '../../../engine/agreement/alignReviews.ts';
import { compareReviews } from '../../../engine/agreement/compareReviews.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { example } from '../options/example.ts';
import { agreementText } from '../print/agreementReport.ts';
import type { Host } from '../run/host.ts';
import { readSession } from '../sources/readSession.ts';

/** `agree A.json B.json`: how far two reviews of the same session agree, and where they differ most. */
export function addAgree(program: Command, host: Host): void {
  program
    .command('agree')
    .description('Measures how far two reviews of the same clips agree: two coaches, or one coach a week apart.')
    .argument('<first>', 'a review file (JSON)')
    .argument('<second>', 'another review of the same session (JSON)')
    .option('--json', 'print all figures as JSON')
    .addHelpText('after', example('rackside agree mine.json yours.json'))
    .action(async (first: string, second: string, options: { json?: true }) => {
      const { review, catalogue } = await readSession(host, first);
      const { review: other, catalogue: from } = await readSession(host, second);
      const aligned = alignReviews(reviewUnder(other, { from, to: catalogue }), review);
      const agreement = compareReviews(review, aligned, catalogue);
      host.print(options.json ? `${JSON.stringify(agreement)}\n` : agreementText(agreement, catalogue));
    });
}
