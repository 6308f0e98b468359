import type { Command } from 'commander';
import { gradeJson } from '../../../engine/sheet/gradeJson.ts';
import { rubricOption } from '../options/documentOptions.ts';
import { example } from '../options/example.ts';
import { gradeReport } from '../print/gradeReport.ts';
import type { Host } from '../run/host.ts';
import { readEdition } from '../sources/reviewFile.ts';

/** `grade SESSION.json`: the grade with its tree, range and what would raise it. */
export function addGrade(program: Command, host: Host): void {
  program
    .command('grade')
    .description(
      'Grades a review file: each grade with its score, the criteria, how much was looked at, and what would raise the grade.',
    )
    .argument('<session>', 'the review file (JSON)')
    .addOption(rubricOption())
    .option('--earlier <files...>', "the trainee's earlier sessions, for weekly sets and rest days")
    .option('--json', 'print the whole grade as JSON')
    .addHelpText('after', example('rackside grade seeds/example-session.json'))
    .action(async (file: string, options: { rubric?: string; earlier?: string[]; json?: true }) => {
      const edition = await readEdition(host, file, options);
      host.print(options.json ? `${JSON.stringify(gradeJson(edition.grade(), 'en'))}\n` : gradeReport(edition));
    });
}
