import { type Command, Option } from 'commander';
import { type Language, languages } from '../../../engine/language/language.ts';
import { type Tone, tones } from '../../../engine/letter/wording/wording.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import { type Paper, papers } from '../../contract/handover.ts';
import { example } from '../example.ts';
import { chooseFormat, exportDocument } from '../exportDocument.ts';
import type { Host } from '../host.ts';
import { namesOption } from '../namesOption.ts';

const formats = ['md', 'html', 'pdf', 'txt'] as const;
type Format = (typeof formats)[number];

const lengths = ['full', 'short'] as const;

type LetterOptions = {
  readonly format?: Format;
  readonly length: (typeof lengths)[number];
  readonly tone: Tone;
  readonly language: Language;
  readonly earlier?: readonly string[];
  readonly names?: NameMode;
  readonly paper: Paper;
  readonly stills?: true;
  readonly out?: string;
  readonly json?: true;
};

/** `letter SESSION.json`: the letter to the trainee. */
export function addLetter(program: Command, host: Host): void {
  program
    .command('letter')
    .description('Writes the letter to the trainee from a review file; of several, each letter into a folder.')
    .argument('<sessions...>', 'the review file (JSON), or several')
    .addOption(
      new Option('--format <format>', 'what to write (default: by the ending of FILE, else md)').choices(formats),
    )
    .option('--out <file>', 'where to write it (default: standard output); a folder for several')
    .addOption(new Option('--length <length>', 'how much it says').choices(lengths).default('full'))
    .addOption(new Option('--tone <tone>', 'how it sounds').choices(tones).default('plain'))
    .addOption(new Option('--language <language>', 'the language it is written in').choices(languages).default('en'))
    .addOption(namesOption('in full'))
    .addOption(new Option('--paper <size>', 'paper of a PDF').choices(papers).default('a4'))
    .option('--stills', 'a picture beside what to change, from the clips (pdf, html)')
    .option('--earlier <files...>', "the trainee's earlier sessions, to say what came of them")
    .option('--json', 'print what was written as JSON; the letter itself within it where there is no --out')
    .addHelpText(
      'after',
      example(
        'rackside letter review.json --format pdf --out letter.pdf',
        'rackside letter sunday/*.json --format pdf --out letters',
      ),
    )
    .action(async (files: string[], options: LetterOptions) => {
      const format = chooseFormat<Format>(formats, options.format, options.out, 'md');
      const { length, tone, language, ...rest } = options;
      const style = { length, tone, language };
      await exportDocument(host, files, { ...rest, document: 'letter', format, style, language });
    });
}
