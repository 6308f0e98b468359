import * as v from 'valibot';

/** The languages that letter and sheet are written in, by BCP 47 tag. */
export const languages = ['en', 'de'] as const;
export const languageSchema = v.picklist(languages);
export type Language = v.InferOutput<typeof languageSchema>;

/** Each language by its own name, so that it is found from any other. */
export const languageNames: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' };

/** BCP 47 tag for numbers, lists and dates. */
export const localeOf: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE' };
