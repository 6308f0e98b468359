import { fill } from '../language/fill.ts';
import { localeOf } from '../language/language.ts';
import { readWarning } from '../motion/warnings.ts';
import type { SheetLanguage } from './sheetLanguage.ts';

/** What a measure warns of, in the sheet's words and figures; a warning that nobody knows stays as it is. */
export function sayWarning(sentence: string, { language, words }: SheetLanguage): string {
  const known = readWarning(sentence);
  if (known === null) return sentence;
  const values = Object.entries(known.values).map(([place, value]) => {
    const digits = value.split('.')[1]?.length ?? 0;
    const format = new Intl.NumberFormat(localeOf[language], {
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    });
    return [place, format.format(Number(value))] as const;
  });
  return fill(words.warnings[known.id], Object.fromEntries(values));
}
