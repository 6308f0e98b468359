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
 * Which way a paragraph is read: by its first letter that says, what is isolated left out (Unicode Standard Annex #9,
 * rules P2 and P3). A paragraph that is nothing but isolated words is read as they are.
 */
export const directionOf = (words: string): Direction =>
  firstStrong(words.replace(isolated, '')) ?? firstStrong(words) ?? 'ltr';
