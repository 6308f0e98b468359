import * as v from 'valibot';
import { type Language, languageSchema } from '../language/language.ts';

/**
 * The texts of the judging data in another language, each under the English text it stands for. A text that is missing
 * stays English.
 */
export const translationSchema = v.strictObject({
  language: languageSchema,
  texts: v.record(v.string(), v.pipe(v.string(), v.minLength(1))),
});
export type Translation = v.InferOutput<typeof translationSchema>;

/** A text in the language of a translation's texts; the text itself where they don't have it. */
export const textIn = (texts: Translation['texts'], english: string): string =>
  Object.hasOwn(texts, english) ? (texts[english] ?? english) : english;

/**
 * Translations that are kept in several parts, as one for each language. Throws an Error naming a text that two parts
 * translate differently.
 */
export function inOneEach(parts: readonly Translation[]): Translation[] {
  const whole = new Map<Language, Record<string, string>>();
  for (const { language, texts } of parts) {
    const known = whole.get(language) ?? {};
    for (const [english, text] of Object.entries(texts)) {
      if (Object.hasOwn(known, english) && known[english] !== text) {
        throw new Error(`translation ${language}: "${english}" is translated in two ways`);
      }
    }
    whole.set(language, { ...known, ...texts });
  }
  return [...whole].map(([language, texts]) => ({ language, texts }));
}
