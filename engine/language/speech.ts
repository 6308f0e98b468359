import { withinSentence } from '../document/tidy.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import { type Language, languages, localeOf, textIn } from './language.ts';

type Values = Readonly<Record<string, string | number>>;

/** Makes sentences in one language from English ones with `{places}`. */
export type Speech = {
  /** The sentence in this language, English where it has no translation, its places filled. */
  readonly say: (english: string, values?: Values) => string;
  /** "a, b and c". */
  readonly list: (items: readonly string[]) => string;
  /** A name from the data as it stands inside a sentence. */
  readonly within: (name: string) => string;
};

type Formats = { readonly list: Intl.ListFormat; readonly number: Intl.NumberFormat };

/** Made once: a formatter costs more than grading an exercise. */
const formats = new Map(
  languages.map((language): [Language, Formats] => [
    language,
    {
      list: new Intl.ListFormat(localeOf[language], { type: 'conjunction' }),
      number: new Intl.NumberFormat(localeOf[language], { maximumFractionDigits: 2 }),
    },
  ]),
);

/** How a catalogue's language says what the engine has to say about it. */
export function speechOf({ language = 'en', translations }: Pick<Catalogue, 'language' | 'translations'>): Speech {
  const texts = translations?.find((one) => one.language === language)?.texts ?? {};
  const shown = (value: string | number): string =>
    typeof value === 'number' ? (formats.get(language)?.number.format(value) ?? String(value)) : value;
  return {
    say: (english, values = {}) =>
      textIn(texts, english).replace(/\{(\w+)\}/g, (_, place: string) => {
        const value = values[place];
        if (value === undefined) throw new Error(`No value for {${place}} in "${english}".`);
        return shown(value);
      }),
    list: (items) => formats.get(language)?.list.format(items) ?? items.join(', '),
    within: (name) => withinSentence(language, name),
  };
}
