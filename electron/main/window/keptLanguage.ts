import { readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import * as v from 'valibot';
import { type Language, languageSchema, languages } from '../../../engine/language/language.ts';

const keptSchema = v.object({ language: languageSchema });

/** The language of the desk as it was kept; where none was, the system's (a BCP 47 tag) if there is a wording for it, else English. */
export function readLanguage(file: string, systemLocale: string): Language {
  const kept = v.safeParse(keptSchema, readKept(file));
  if (kept.success) return kept.output.language;
  const [primary] = systemLocale.toLowerCase().split(/[-_]/);
  return languages.find((language) => language === primary) ?? 'en';
}

/** What stands in the file; null where there is none, or nothing that can be read: the system's language serves then. */
function readKept(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
}

/** Keeps the language of the desk for the next start. */
export const keepLanguage = (file: string, language: Language): Promise<void> =>
  writeFile(file, `${JSON.stringify({ language })}\n`);
