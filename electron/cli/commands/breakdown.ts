import { type Command, Option } from 'commander';
import { type Language, languages } from '../../../engine/language/language.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import { documentFormats } from '../../contract/documents.ts';
import { type Paper, papers } from '../../contract/handover.ts';
import { example } from '../example.ts';
import { chooseFormat, exportDocument } from '../exportDocument.ts';
import type { Host } from '../host.ts';
import { namesOption } from '../namesOption.ts';

type Format = (typeof documentFormats)[number];

type BreakdownOptions = {
  readonly format?: Format;
  readonly language: Language;
  readonly names?: NameMode;
  readonly paper: Paper;
  readonly out?: string;
  readonly json?: true;
};

/** `breakdown SESSION.json`: one page with a chart for each criterion. */
export function addBreakdown(program: Command, host: Host): void {
  program
    .command('breakdown')
    .description('Writes the grade breakdown from a review file: one page, a chart for each criterion.')
    .argument('<sessions...>', 'the review file (JSON), or several')
    .addOption(
      new Option('--format <format>', 'what to write (default: by the ending of FILE, else md)').choices(
        documentFormats,
      ),
    )
    .addOption(new Option('--language <language>', 'the language it is written in').choices(languages).default('en'))
    .addOption(namesOption('in full'))
    .addOption(new Option('--paper <size>', 'paper of a PDF').choices(papers).default('a4'))
    .option('--out <file>', 'where to write it (default: standard output); a folder for several')
    .option('--json', 'print what was written as JSON; the page itself within it where there is no --out')
    .addHelpText('after', example('rackside breakdown review.json --out breakdown.pdf'))
    .action(async (files: string[], { format: asked, ...options }: BreakdownOptions) => {
      const format = chooseFormat<Format>(documentFormats, asked, options.out, 'md');
      await exportDocument(host, files, { document: 'breakdown', format, ...options });
    });
}
