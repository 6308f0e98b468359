import { unspacedBreaks } from '../../../lettering/lineBreaks.ts';

/** Gives the width of a line, in pixels. */
export type WidthOf = (text: string) => number;

const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

type Word = { readonly word: string; readonly before: '' | ' ' };

/** What stays together, and whether there is a space before it. */
const wordsOf = (text: string): readonly Word[] =>
  text
    .split(/\s+/)
    .filter((each) => each !== '')
    .flatMap((each) => {
      const cuts = [0, ...unspacedBreaks(each), each.length];
      return cuts.slice(0, -1).map((from, index) => ({
        word: each.slice(from, cuts[index + 1]),
        before: index === 0 ? ' ' : '',
      }));
    });

/**
 * Breaks text into lines no wider than `widthPx`: at spaces, where scripts without them allow, and within words only where
 * one is wider than a line.
 */
export function wrapText(text: string, widthPx: number, widthOf: WidthOf): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const { word, before } of wordsOf(text)) {
    const joined = line === '' ? word : `${line}${before}${word}`;
    if (widthOf(joined) <= widthPx) {
      line = joined;
      continue;
    }
    if (line !== '') lines.push(line);
    const parts = widthOf(word) <= widthPx ? [word] : pieces(word, widthPx, widthOf);
    lines.push(...parts.slice(0, -1));
    line = parts.at(-1) ?? '';
  }
  return line === '' ? lines : [...lines, line];
}

function pieces(word: string, widthPx: number, widthOf: WidthOf): readonly string[] {
  const found: string[] = [];
  let piece = '';
  for (const { segment } of graphemes.segment(word)) {
    if (piece !== '' && widthOf(piece + segment) > widthPx) {
      found.push(piece);
      piece = '';
    }
    piece += segment;
  }
  return piece === '' ? found : [...found, piece];
}
