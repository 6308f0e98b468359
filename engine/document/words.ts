/** Direction in which words are read. */
export type Direction = 'ltr' | 'rtl';

/** Scripts whose letters have the bidirectional class R or AL. */
const rightToLeftScripts = [
  'Hebrew',
  'Arabic',
  'Syriac',
  'Thaana',
  'Nko',
  'Adlam',
  'Samaritan',
  'Mandaic',
  'Hanifi_Rohingya',
]
  .map((script) => `\\p{Script=${script}}`)
  .join('');
const rightToLeft = new RegExp(`[${rightToLeftScripts}]`, 'u');
const isolated = /[\u2066-\u2068][^\u2066-\u2069]*\u2069/g;

const firstStrong = (words: string): Direction | null => {
  const [letter] = /[\p{L}\u200E\u200F\u061C]/u.exec(words) ?? [];
  if (letter === undefined) return null;
  return rightToLeft.test(letter) || letter === '\u200F' || letter === '\u061C' ? 'rtl' : 'ltr';
};

/** Whether there is anything in words that is written from right to left. */
export const hasRightToLeft = (words: string): boolean => rightToLeft.test(words);

/**
 * Which way a paragraph is read: by its first letter that has a direction, leaving out isolated words (Unicode Standard
 * Annex #9, rules P2 and P3). A paragraph that is nothing but isolated words is read as they are.
 */
export const directionOf = (words: string): Direction =>
  firstStrong(words.replace(isolated, '')) ?? firstStrong(words) ?? 'ltr';

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
