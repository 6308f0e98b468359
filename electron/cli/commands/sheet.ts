import { type Command, Option } from 'commander';
import type { Language } from '../../../engine/language/language.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import { type SheetLength, sheetLengths } from '../../../engine/sheet/sheetExtras.ts';
import { documentFormats, sheetFormats } from '../../contract/documents.ts';
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
import { type FootageOutside, footageOutsideOption } from '../options/footageOutside.ts';
import type { Host } from '../run/host.ts';
import { exportDocument } from '../write/exportDocument.ts';

const formats = [...documentFormats, ...sheetFormats] as const;

type SheetFlags = DocumentFlags<(typeof formats)[number]> & {
  readonly clip?: string;
  readonly length: SheetLength;
  readonly measured?: true;
  readonly stills?: true;
  readonly footageOutside?: FootageOutside;
  readonly language: Language;
  readonly names?: NameMode;
  readonly unsureNames?: UnsureNames;
  readonly paper: Paper;
  readonly rubric?: string;
};

/** `sheet SESSION.json`: every flag with its time. */
export function addSheet(program: Command, host: Host): void {
  const command = program
    .command('sheet')
    .description(
      'Writes the sheet from a review file: every flag with its time, as a document, a table, data or timed notes; from several files, one sheet each, into a folder.',
    )
    .argument('<sessions...>', 'the review file (JSON), or several');
  addDocumentOptions(command, { formats, noun: 'sheet', out: fileOrFolder })
    .addOption(
      new Option('--length <length>', 'how much a document tells; short: grades, flags, programme')
        .choices(sheetLengths)
        .default('full'),
    )
    .option('--measured', 'measure the clips first, and add the measures (pdf, html, md, txt, json)')
    .option('--stills', 'a picture of each note, from the clips (pdf, html)')
    .addOption(footageOutsideOption())
    .option('--clip <id>', 'the clip whose timed notes to write (vtt, srt)')
    .addOption(languageOption())
    .addOption(namesOption('in full'))
    .addOption(unsureNamesOption())
    .addOption(paperOption())
    .addOption(rubricOption())
    .addHelpText(
      'after',
      example(
        'rackside sheet review.json --format csv > flags.csv',
        'rackside sheet review.json --clip clip-1 --out notes.vtt',
      ),
    )
    .action(async (files: string[], { length, ...flags }: SheetFlags) => {
      const format = chooseFormat(formats, flags);
      const isShort = length === 'short' && documentFormats.some((each) => each === format);
      await exportDocument(host, files, { ...flags, document: isShort ? 'shortSheet' : 'sheet', format });
    });
}
