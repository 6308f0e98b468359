import bidiFactory from 'bidi-js/dist/bidi.mjs';
import { type Direction, directionOf, hasRightToLeft } from '../../../engine/document/words.ts';

const bidi = bidiFactory();

/** In which direction a paragraph is read, and the embedding level of each of its UTF-16 units. */
export type WritingOrder = { readonly direction: Direction; readonly levelAt: (index: number) => number };

const leftToRight: WritingOrder = { direction: 'ltr', levelAt: () => 0 };

/** The level of a paragraph itself (Unicode Standard Annex #9, rule P3). */
export const levelOf = (direction: Direction): 0 | 1 => (direction === 'rtl' ? 1 : 0);

/** The embedding levels of a paragraph that has no line ends in it (Unicode Standard Annex #9, rules X1 to I2). */
export function writingOrderOf(paragraph: string): WritingOrder {
  if (!hasRightToLeft(paragraph)) return leftToRight;
  const direction = directionOf(paragraph);
  const { levels } = bidi.getEmbeddingLevels(paragraph, direction);
  return { direction, levelAt: (index) => levels[index] ?? levelOf(direction) };
}

/** The pieces of one line from left to right; they are given in reading order (rule L2). */
export function fromLeftToRight<Piece extends { readonly level: number }>(line: readonly Piece[]): Piece[] {
  const pieces = [...line];
  const highest = Math.max(0, ...pieces.map(({ level }) => level));
  for (let level = highest; level >= 1; level -= 1) {
    for (let from = 0; from < pieces.length; from += 1) {
      let to = from;
      while ((pieces[to]?.level ?? -1) >= level) to += 1;
      if (to > from) pieces.splice(from, to - from, ...pieces.slice(from, to).reverse());
      from = to;
    }
  }
  return pieces;
}

/** Brackets and the like as they look among right-to-left words (rule L4). */
export const mirrored = (text: string): string =>
  [...text].map((character) => bidi.getMirroredCharacter(character) ?? character).join('');
