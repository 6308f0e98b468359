import type { Catalogue } from '../exercises/catalogue.ts';
import { localeOf } from './language.ts';

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

const lowerFirst = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** How a catalogue's language says what the engine has to say about it. */
export function speechOf({ language = 'en', translations }: Pick<Catalogue, 'language' | 'translations'>): Speech {
  const locale = localeOf[language];
  const texts = translations?.find((one) => one.language === language)?.texts ?? {};
  const shown = (value: string | number): string =>
    typeof value === 'number' ? new Intl.NumberFormat(locale, { maximumFractionDigits: 2 }).format(value) : value;
  return {
    say: (english, values = {}) =>
      (texts[english] ?? english).replace(/\{(\w+)\}/g, (_, place: string) => {
        const value = values[place];
        if (value === undefined) throw new Error(`No value for {${place}} in "${english}".`);
        return shown(value);
      }),
    list: (items) => new Intl.ListFormat(locale, { type: 'conjunction' }).format(items),
    within: (name) => (language === 'en' ? lowerFirst(name) : name),
  };
}
