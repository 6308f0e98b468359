import type { Command } from 'commander';
import { alignReviews } from '../../../engine/agreement/alignReviews.ts';
import { compareReviewers } from '../../../engine/agreement/compareReviewers.ts';
import { compareReviews } from '../../../engine/agreement/compareReviews.ts';
import type { Review } from '../../../engine/review/review.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { example } from '../options/example.ts';
import { agreementReport, groupReport } from '../print/agreementReport.ts';
import type { Host } from '../run/host.ts';
import { readSession, type Session } from '../sources/reviewFile.ts';

/** `agree A.json B.json ...`: how far reviews of the same session agree, and where they differ most. */
export function addAgree(program: Command, host: Host): void {
  program
    .command('agree')
    .description(
      'Measures how far reviews of the same clips agree: two coaches, one coach a week apart, or three and more coaches.',
    )
    .argument('<first>', 'a review file (JSON); the others are compared under its rubric')
    .argument('<second>', 'another review of the same session (JSON)')
    .argument('[others...]', "further reviews of it: three or more are compared by Fleiss' kappa, and two by two")
    .option('--json', 'print all figures as JSON')
    .addHelpText('after', example('rackside agree mine.json yours.json', 'rackside agree anna.json ben.json cleo.json'))
    .action(async (first: string, second: string, others: readonly string[], options: { json?: true }) => {
      const own = await readSession(host, first);
      const { review, catalogue } = own;
      const other = await readLike(host, second, own);
      if (others.length === 0) {
        const agreement = compareReviews(review, other, catalogue);
        host.print(options.json ? `${JSON.stringify(agreement)}\n` : agreementReport(agreement, catalogue));
        return;
      }
      const files = [first, second, ...others];
      const further = await Promise.all(others.map((file) => readLike(host, file, own)));
      const agreement = compareReviewers([review, other, ...further], catalogue);
      host.print(
        options.json
          ? `${JSON.stringify({ reviews: files, ...agreement })}\n`
          : groupReport(agreement, catalogue, files),
      );
    });
}

/** A review with its entries and clips named as in another review, judged under that one's rubric. */
async function readLike(host: Host, file: string, { review: like, catalogue: to }: Session): Promise<Review> {
  const { review, catalogue: from } = await readSession(host, file);
  return alignReviews(reviewUnder(review, { from, to }), like);
}
