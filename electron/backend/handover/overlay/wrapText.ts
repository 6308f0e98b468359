/** Gives the width of a line, in pixels. */
export type WidthOf = (text: string) => number;

const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

/** Breaks text into lines no wider than `widthPx`: at spaces, within words only where one is wider than a line. */
export function wrapText(text: string, widthPx: number, widthOf: WidthOf): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((each) => each !== '')) {
    const joined = line === '' ? word : `${line} ${word}`;
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

/** Whether a line is written from right to left: by its first letter that says. */
export const isRightToLeft = (line: string): boolean =>
  /^[^\p{L}]*[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u.test(line);
