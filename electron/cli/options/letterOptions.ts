import { type Command, Option } from 'commander';
import type { Language } from '../../../engine/language/language.ts';
import { type LetterStyle, type Tone, tones } from '../../../engine/letter/letter.ts';
import { languageOption } from './documentOptions.ts';

const lengths = ['full', 'short'] as const;

/** Options that say how the letter of a review file is written, as commander gives them. */
export type LetterFlags = {
  readonly length: LetterStyle['length'];
  readonly tone: Tone;
  readonly language: Language;
  readonly earlier?: readonly string[];
};

/** Adds `--length`, `--tone`, `--language` and `--earlier`. */
export function addLetterOptions(command: Command): Command {
  return command
    .addOption(new Option('--length <length>', 'how much the letter says').choices(lengths).default('full'))
    .addOption(new Option('--tone <tone>', 'the tone of the letter').choices(tones).default('plain'))
    .addOption(languageOption())
    .option(
      '--earlier <files...>',
      "the trainee's earlier sessions, so that the letter can say what has changed since",
    );
}
