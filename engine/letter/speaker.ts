import { type InLanguage, inLanguage } from '../document/inLanguage.ts';
import { withinSentence } from '../document/tidy.ts';
import type { Counted, Messages, Tone, Wording } from './wording/wording.ts';

type Values = Readonly<Record<string, string>>;

/** Speaks one language in one voice. */
export type Speaker = InLanguage & {
  readonly words: Messages;
  readonly language: string;
  /** A name or a clause as it stands inside a sentence: English takes its capital off, German keeps it. */
  readonly within: (name: string) => string;
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

function messagesOf(wording: Wording, voice: 'coach' | 'self', tone: Tone): Messages {
  return voice === 'self' || tone === 'plain' ? wording[voice] : { ...wording.coach, ...wording.tones[tone] };
}

/** The speaker of a wording, as a coach in a tone or as the athlete alone. */
export function speakerOf(wording: Wording, voice: 'coach' | 'self', tone: Tone = 'plain'): Speaker {
  const language = inLanguage(wording.locale);
  return {
    ...language,
    words: messagesOf(wording, voice, tone),
    language: wording.language,
    within: (name) => withinSentence(wording.language, name),
    say: (text, values = {}) => fill(text, values),
    count: (texts, count, values = {}) =>
      fill(texts[language.plural(count)] ?? texts.other, { count: language.whole(count), ...values }),
  };
}
