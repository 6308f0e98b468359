import { type Command, Option } from 'commander';
import { type Language, languages } from '../../../engine/language/language.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import { type SheetLength, sheetLengths } from '../../../engine/sheet/sheetExtras.ts';
import { documentFormats } from '../../contract/documents.ts';
import { type Paper, papers } from '../../contract/handover.ts';
import { example } from '../example.ts';
import { chooseFormat, exportDocument } from '../exportDocument.ts';
import type { Host } from '../host.ts';
import { namesOption } from '../namesOption.ts';

const formats = ['pdf', 'html', 'md', 'csv', 'vtt', 'srt', 'json', 'jsonld', 'txt'] as const;
type Format = (typeof formats)[number];

type SheetOptions = {
  readonly format?: Format;
  readonly clip?: string;
  readonly length: SheetLength;
  readonly measured?: true;
  readonly stills?: true;
  readonly language: Language;
  readonly names?: NameMode;
  readonly paper: Paper;
  readonly out?: string;
  readonly json?: true;
};

/** `sheet SESSION.json`: every flag with its time. */
export function addSheet(program: Command, host: Host): void {
  program
    .command('sheet')
    .description(
      'Writes the sheet from a review file: every flag with its time, as a document, a table, data or timed notes; of several, each into a folder.',
    )
    .argument('<sessions...>', 'the review file (JSON), or several')
    .addOption(
      new Option('--format <format>', 'what to write (default: by the ending of FILE, else md)').choices(formats),
    )
    .addOption(
      new Option('--length <length>', 'how much a document tells; short: grades, flags, programme')
        .choices(sheetLengths)
        .default('full'),
    )
    .option('--measured', 'measure the clips first, and tell what was measured (pdf, html, md, txt, json)')
    .option('--stills', 'a picture of each remark, from the clips (pdf, html)')
    .option('--clip <id>', 'the clip whose timed notes to write (vtt, srt)')
    .addOption(new Option('--language <language>', 'the language it is written in').choices(languages).default('en'))
    .addOption(namesOption('in full'))
    .addOption(new Option('--paper <size>', 'paper of a PDF').choices(papers).default('a4'))
    .option('--out <file>', 'where to write it (default: standard output); a folder for several')
    .option('--json', 'print what was written as JSON; the sheet itself within it where there is no --out')
    .addHelpText(
      'after',
      example(
        'rackside sheet review.json --format csv > flags.csv',
        'rackside sheet review.json --clip clip-1 --out notes.vtt',
      ),
    )
    .action(async (files: string[], options: SheetOptions) => {
      const format = chooseFormat<Format>(formats, options.format, options.out, 'md');
      await exportDocument(host, files, {
        document:
          options.length === 'short' && documentFormats.some((each) => each === format) ? 'shortSheet' : 'sheet',
        format,
        clip: options.clip,
        measured: options.measured,
        stills: options.stills,
        language: options.language,
        names: options.names,
        paper: options.paper,
        out: options.out,
        json: options.json,
      });
    });
}
