/** Languages: which there are, the judging data in each, and sentences in the language of the data. */
export { fill } from './fill.ts';
export { type Language, languageSchema, languages, localeOf, type Translation, translationSchema } from './language.ts';
export { type Speech, speechOf } from './speech.ts';
export { inItsWords, translated } from './translated.ts';
