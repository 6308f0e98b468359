import { type Command, Option } from 'commander';
import { type Language, languages } from '../../../engine/language/language.ts';
import { type LetterStyle, type Tone, tones } from '../../../engine/letter/letter.ts';
import { nameModes } from '../../../engine/names/shownName.ts';
import { papers } from '../../contract/handover.ts';

/** Options of every command that writes a document, as commander gives them. */
export type DocumentFlags<F extends string> = {
  readonly format?: F;
  readonly out?: string;
  readonly json?: true;
};

/** Adds `--format`, `--out` and `--json`; `noun` is what the document is called in the help text. */
export function addDocumentOptions(
  command: Command,
  { formats, noun, out }: { readonly formats: readonly string[]; readonly noun: string; readonly out: string },
): Command {
  return command
    .addOption(
      new Option('--format <format>', 'the format to write (default: from the name of FILE, or md)').choices(formats),
    )
    .option('--out <file>', out)
    .option('--json', `print what was written as JSON; without --out, the ${noun} itself is in it`);
}

/** What `--out` means to a command that takes one review file or several. */
export const fileOrFolder = 'the file to write (default: standard output); the folder, for several sessions';

/** `--rubric`. */
export function rubricOption(): Option {
  return new Option(
    '--rubric <rubric>',
    'judge by another rubric: a version or a rubric file; the review stays as it is',
  );
}

/** `--language`. */
export function languageOption(): Option {
  return new Option('--language <language>', 'the language it is written in').choices(languages).default('en');
}

/** `--paper`. */
export function paperOption(): Option {
  return new Option('--paper <size>', 'the paper size of PDFs').choices(papers).default('a4');
}

/** `--names`: how the trainee is named; `usual` says how without the option. */
export function namesOption(usual: string): Option {
  return new Option('--names <mode>', `how the trainee is named throughout (default: ${usual})`).choices(nameModes);
}

/** What to do with words that may be the name or not; without it, nothing is written while there are any. */
export const unsureNames = ['hide', 'keep'] as const;
export type UnsureNames = (typeof unsureNames)[number];

/** `--unsure-names`. */
export function unsureNamesOption(): Option {
  return new Option(
    '--unsure-names <how>',
    'words that may be the hidden name or not: hide or keep all of them (default: write nothing and list them)',
  ).choices(unsureNames);
}

/** The format to write: the one asked for, else the one that the file's ending names, else Markdown. */
export function chooseFormat<F extends string>(formats: readonly F[], { format, out }: DocumentFlags<F>): F | 'md' {
  if (format !== undefined) return format;
  const ending = /\.([a-z]+)$/i.exec(out ?? '')?.[1]?.toLowerCase();
  return formats.find((each) => each === ending) ?? 'md';
}

const lengths = ['full', 'short'] as const;

/** Options that say how the letter of a review file is written, as commander gives them. */
export type LetterFlags = {
  readonly length: LetterStyle['length'];
  readonly tone: Tone;
  readonly language: Language;
  readonly earlier?: readonly string[];
  readonly rubric?: string;
};

/** Adds `--length`, `--tone`, `--language`, `--earlier` and `--rubric`. */
export function addLetterOptions(command: Command): Command {
  return command
    .addOption(new Option('--length <length>', 'how much the letter says').choices(lengths).default('full'))
    .addOption(new Option('--tone <tone>', 'the tone of the letter').choices(tones).default('plain'))
    .addOption(languageOption())
    .option('--earlier <files...>', "the trainee's earlier sessions, so that the letter can say what has changed since")
    .addOption(rubricOption());
}
