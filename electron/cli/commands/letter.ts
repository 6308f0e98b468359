import type { Command } from 'commander';
import type { NameMode } from '../../../engine/names/shownName.ts';
import { documentFormats } from '../../contract/documents.ts';
import type { Paper } from '../../contract/handover.ts';
import {
  addDocumentOptions,
  addLetterOptions,
  chooseFormat,
  type DocumentFlags,
  fileOrFolder,
  type LetterFlags,
  namesOption,
  paperOption,
  type UnsureNames,
  unsureNamesOption,
} from '../options/documentOptions.ts';
import { example } from '../options/example.ts';
import { type FootageOutside, footageOutsideOption } from '../options/footageOutside.ts';
import type { Host } from '../run/host.ts';
import { exportDocument } from '../write/exportDocument.ts';

type LetterCommandFlags = DocumentFlags<(typeof documentFormats)[number]> &
  LetterFlags & {
    readonly names?: NameMode;
    readonly unsureNames?: UnsureNames;
    readonly paper: Paper;
    readonly stills?: true;
    readonly footageOutside?: FootageOutside;
  };

/** `letter SESSION.json`: the letter to the trainee. */
export function addLetter(program: Command, host: Host): void {
  const command = program
    .command('letter')
    .description(
      'Writes the letter to the trainee from a review file; from several files, one letter each, into a folder.',
    )
    .argument('<sessions...>', 'the review file (JSON), or several');
  addDocumentOptions(addLetterOptions(command), { formats: documentFormats, noun: 'letter', out: fileOrFolder })
    .addOption(namesOption('in full'))
    .addOption(unsureNamesOption())
    .addOption(paperOption())
    .option('--stills', 'a picture from the clips beside each thing to change (pdf, html)')
    .addOption(footageOutsideOption())
    .addHelpText(
      'after',
      example(
        'rackside letter review.json --format pdf --out letter.pdf',
        'rackside letter sunday/*.json --format pdf --out letters',
      ),
    )
    .action(async (files: string[], flags: LetterCommandFlags) => {
      const format = chooseFormat(documentFormats, flags);
      await exportDocument(host, files, { ...flags, document: 'letter', format });
    });
}
