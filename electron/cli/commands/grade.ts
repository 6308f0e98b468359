import type { Command } from 'commander';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import type { Rubric } from '../../../engine/rubric/rubric.ts';
import { gradeJson } from '../../../engine/sheet/gradeJson.ts';
import { catalogueUnder } from '../../backend/catalogue/loadCatalogue.ts';
import { example } from '../options/example.ts';
import { gradeReport } from '../print/gradeReport.ts';
import type { Host } from '../run/host.ts';
import { readRubric } from '../sources/fromCatalogue.ts';
import { editionOfSession, readSession, type Session } from '../sources/reviewFile.ts';

/** `grade SESSION.json`: the grade with its tree, range and what would raise it. */
export function addGrade(program: Command, host: Host): void {
  program
    .command('grade')
    .description('Grades a review file: marks, scores, range, coverage, criteria, and what would raise the grade.')
    .argument('<session>', 'the review file (JSON)')
    .option('--rubric <rubric>', 'grade under another rubric: a version or a rubric file; the review stays as it is')
    .option('--json', 'print the whole grade as JSON')
    .addHelpText('after', example('rackside grade seeds/example-session.json'))
    .action(async (file: string, options: { rubric?: string; json?: true }) => {
      const session = await readSession(host, file);
      const judged =
        options.rubric === undefined ? session : underRubric(host, session, await readRubric(host, options.rubric));
      const edition = await editionOfSession(host, judged, {});
      host.print(options.json ? `${JSON.stringify(gradeJson(edition.grade(), 'en'))}\n` : gradeReport(edition));
    });
}

function underRubric(host: Host, { review, catalogue: from }: Session, rubric: Rubric): Session {
  const to = catalogueUnder(host.appFolder, rubric);
  return { review: reviewUnder(review, { from, to }), catalogue: to };
}
