import type { Language } from '../language/language.ts';

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
