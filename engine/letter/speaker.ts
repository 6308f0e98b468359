import { type Inline, text } from '../document/document.ts';
import { type InLanguage, inLanguage } from '../document/inLanguage.ts';
import { type Language, localeOf } from '../language/language.ts';
import { formatMessage, formatMessageParts } from '../message/formatMessage.ts';
import type { MessageValues } from '../message/message.ts';
import type { LetterMessageId, LetterMessages } from '../wording/english/letter.ts';
import { letterWording, namedInSentence, withinSentence } from '../wording/wordings.ts';
import type { Tone } from './letter.ts';

/** Lines by the name of the value they fill. */
type Lines = Readonly<Record<string, readonly Inline[]>>;

/** Speaks one language in one voice. */
export type Speaker = InLanguage & {
  readonly language: Language;
  /** A name or a clause as it stands inside a sentence: English takes its capital off, German keeps it. */
  readonly within: (name: string) => string;
  /** Exercises inside a sentence, as a list: "the back squat and the Romanian deadlift". */
  readonly lifts: (names: readonly string[]) => string;
  /** A text of the letter; throws where a value is missing, so that no letter goes out with a gap. */
  readonly say: (id: LetterMessageId, values?: MessageValues) => string;
  /** A text with whole lines set into it, their moments kept as moments. */
  readonly sayAround: (id: LetterMessageId, lines: Lines, values?: MessageValues) => Inline[];
};

function messagesOf(language: Language, voice: 'coach' | 'self', tone: Tone): LetterMessages {
  const { coach, self, tones } = letterWording[language];
  if (voice === 'self') return self;
  return tone === 'plain' ? coach : { ...coach, ...tones[tone] };
}

/** The speaker for a language, voice and tone; an athlete's own review has one tone. */
export function speakerOf(language: Language, voice: 'coach' | 'self', tone: Tone = 'plain'): Speaker {
  const locale = localeOf[language];
  const messages = messagesOf(language, voice, tone);
  const own = inLanguage(locale);
  return {
    ...own,
    language,
    within: (name) => withinSentence(language, name),
    lifts: (names) => own.list([...new Set(names)].map((name) => namedInSentence(language, name))),
    say: (id, values) => formatMessage(messages[id], locale, values),
    sayAround: (id, lines, values) => {
      const set = Object.entries(lines).map(([name, line]) => [name, { line }] as const);
      return formatMessageParts(messages[id], locale, { ...values, ...Object.fromEntries(set) })
        .flatMap((part) => (typeof part === 'string' ? [text(part)] : part.line))
        .filter((inline) => inline.text !== '');
    },
  };
}
