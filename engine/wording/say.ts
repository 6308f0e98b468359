import { type Language, localeOf } from '../language/language.ts';
import { formatMessage } from '../message/formatMessage.ts';
import type { MessageValues } from '../message/message.ts';

/** Says a text of one topic in one language; throws where a value is missing. */
export type Say<Id extends string> = (id: Id, values?: MessageValues) => string;

/** How a language says the texts of a topic, from its wording. */
export function sayerOf<Id extends string>(
  wording: Readonly<Record<Language, Readonly<Record<Id, string>>>>,
  language: Language,
): Say<Id> {
  return (id, values) => formatMessage(wording[language][id], localeOf[language], values);
}

/** A name or clause of ours as it stands inside a sentence: English takes its capital off, German keeps it. */
export function withinSentence(language: Language, words: string): string {
  return language === 'en' ? lowerFirst(words) : words;
}

/** First letter small; names in capitals stay. */
function lowerFirst(words: string): string {
  const [first = '', second = '', ...others] = words;
  return second !== '' && second === second.toUpperCase() && second !== second.toLowerCase()
    ? words
    : `${first.toLowerCase()}${second}${others.join('')}`;
}
