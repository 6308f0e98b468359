import { type InLanguage, inLanguage } from '../document/index.ts';
import type { Counted, Messages, Wording } from './wording/wording.ts';

type Values = Readonly<Record<string, string>>;

/** Speaks one language in one voice. */
export type Speaker = InLanguage & {
  readonly words: Messages;
  readonly language: string;
  /** Fills the `{places}` of a text; throws where a value is missing, so that no letter goes out with a gap. */
  readonly say: (text: string, values?: Values) => string;
  /** The text for a count, with `{count}` and other places filled. */
  readonly count: (texts: Counted, count: number, values?: Values) => string;
};

function fill(text: string, values: Values): string {
  return text.replace(/\{(\w+)\}/g, (_, place: string) => {
    const value = values[place];
    if (value === undefined) throw new Error(`The letter's wording has no value for {${place}} in "${text}".`);
    return value;
  });
}

/** The speaker of a wording, as a coach or as the athlete alone. */
export function speakerOf(wording: Wording, voice: 'coach' | 'self'): Speaker {
  const language = inLanguage(wording.locale);
  return {
    ...language,
    words: wording[voice],
    language: wording.language,
    say: (text, values = {}) => fill(text, values),
    count: (texts, count, values = {}) =>
      fill(texts[language.plural(count)] ?? texts.other, { count: language.whole(count), ...values }),
  };
}
