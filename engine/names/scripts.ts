/** How a script writes words: what stands around a name in it decides whether the name ends there. */
export type Writing = 'latin' | 'cyrillic' | 'greek' | 'arabic' | 'hebrew' | 'hangul' | 'unspaced' | 'other';

const writings: readonly (readonly [Writing, RegExp])[] = [
  ['latin', /\p{sc=Latin}/u],
  ['cyrillic', /\p{sc=Cyrillic}/u],
  ['greek', /\p{sc=Greek}/u],
  ['arabic', /[\p{sc=Arabic}\p{sc=Syriac}]/u],
  ['hebrew', /\p{sc=Hebrew}/u],
  ['hangul', /\p{sc=Hangul}/u],
  [
    'unspaced',
    /[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}\p{sc=Bopomofo}\p{sc=Thai}\p{sc=Lao}\p{sc=Khmer}\p{sc=Myanmar}\p{sc=Tibetan}\u30fc\uff70]/u,
  ],
];

/** How a letter's script writes words. */
export const writingOf = (letter: string): Writing =>
  writings.find(([, script]) => script.test(letter))?.[0] ?? 'other';

/** Scripts with capital letters, which tell a name from a word. */
export const hasCapitals = (writing: Writing): boolean =>
  writing === 'latin' || writing === 'cyrillic' || writing === 'greek';
