import { type InLanguage, inLanguage } from '../document/inLanguage.ts';
import { type Language, localeOf } from '../language/language.ts';
import type { Weight } from '../rubric/rubric.ts';
import { english } from './english.ts';
import { german } from './german.ts';
import type { SheetWords } from './sheetWords.ts';
import { strokes } from './strokes.ts';

/** The sheet's words and figures in one language. */
export type SheetLanguage = {
  readonly language: Language;
  readonly words: SheetWords;
  readonly format: InLanguage;
  /** A weight as word and strokes: "correct |||". */
  readonly weightText: (weight: Weight) => string;
  /** The same where a line may break: word and strokes stay together. */
  readonly weightLine: (weight: Weight) => string;
};

const wordsOf: Readonly<Record<Language, SheetWords>> = { en: english, de: german };

/** The sheet's language for a tag. */
export function sheetLanguage(language: Language): SheetLanguage {
  const words = wordsOf[language];
  return {
    language,
    words,
    format: inLanguage(localeOf[language]),
    weightText: (weight) => `${words.weights[weight]} ${strokes[weight]}`,
    weightLine: (weight) => `${words.weights[weight]}\u00A0${strokes[weight]}`,
  };
}
