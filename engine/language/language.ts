import * as v from 'valibot';

/** The languages that letter and sheet are written in, by BCP 47 tag. */
export const languages = ['en', 'de'] as const;
export const languageSchema = v.picklist(languages);
export type Language = v.InferOutput<typeof languageSchema>;

/** BCP 47 tag for numbers, lists and dates. */
export const localeOf: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE' };

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
