import type { Command } from 'commander';
import type { Language } from '../../../engine/language/language.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import { documentFormats } from '../../contract/documents.ts';
import type { Paper } from '../../contract/handover.ts';
import {
  addDocumentOptions,
  chooseFormat,
  type DocumentFlags,
  fileOrFolder,
  languageOption,
  namesOption,
  paperOption,
  rubricOption,
  type UnsureNames,
  unsureNamesOption,
} from '../options/documentOptions.ts';
import { example } from '../options/example.ts';
import type { Host } from '../run/host.ts';
import { exportDocument } from '../write/exportDocument.ts';

type BreakdownFlags = DocumentFlags<(typeof documentFormats)[number]> & {
  readonly language: Language;
  readonly names?: NameMode;
  readonly unsureNames?: UnsureNames;
  readonly paper: Paper;
  readonly rubric?: string;
};

/** `breakdown SESSION.json`: one page with a chart for each criterion. */
export function addBreakdown(program: Command, host: Host): void {
  const command = program
    .command('breakdown')
    .description('Writes the grade breakdown from a review file: one page, with a chart for each criterion.')
    .argument('<sessions...>', 'the review file (JSON), or several');
  addDocumentOptions(command, { formats: documentFormats, noun: 'page', out: fileOrFolder })
    .addOption(languageOption())
    .addOption(namesOption('in full'))
    .addOption(unsureNamesOption())
    .addOption(paperOption())
    .addOption(rubricOption())
    .addHelpText('after', example('rackside breakdown review.json --out breakdown.pdf'))
    .action(async (files: string[], flags: BreakdownFlags) => {
      const format = chooseFormat(documentFormats, flags);
      await exportDocument(host, files, { ...flags, document: 'breakdown', format });
    });
}
