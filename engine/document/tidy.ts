import { hasRightToLeft } from './direction.ts';

/** Controls, and the marks that steer the direction of writing. */
const unprintable = /[\p{Cc}\uFEFF\u202A-\u202E\u2066-\u2069\u200E\u200F]/gu;

/**
 * Words a person typed, made fit for the middle of our own line: whitespace of any kind is one space, controls are
 * gone, and words written from right to left are isolated so that they can't turn their surroundings round
 * (Unicode bidirectional algorithm, FSI and PDI).
 */
export function tidy(words: string): string {
  const line = words.toWellFormed().replace(/\s+/g, ' ').replace(unprintable, '').trim();
  return hasRightToLeft(line) ? `\u2068${line}\u2069` : line;
}

/** `tidy` words as a sentence: ends with a mark that ends one; '' stays ''. */
export function sentence(words: string): string {
  const line = tidy(words);
  if (line === '' || /[.!?…。！？؟]["'”’»)\]\u2069]*$/u.test(line)) return line;
  return `${line.replace(/[,;:]$/, '')}.`;
}

/** First letter large, for words that begin a sentence. */
export function upperFirst(words: string): string {
  const [first = '', ...others] = words;
  return `${first.toUpperCase()}${others.join('')}`;
}
