import type { Block } from '../document/document.ts';
import { plainText } from '../document/inlines.ts';
import { blocksOf, type Letter } from '../letter/letter.ts';

/** What a letter asks to be filmed next: its heading, and a sentence or two each. */
export type FilmAsks = { readonly title: string; readonly asks: readonly string[] };

const headings = (block: Block) => (block.kind === 'heading' ? [block.text] : []);
const paragraphs = (block: Block) => (block.kind === 'paragraph' ? [plainText(block.inlines)] : []);

/** The asks of a letter in its words, the coach's where they wrote some; none where it doesn't ask. */
export function filmAsks(letter: Letter): FilmAsks {
  const film = blocksOf(letter, 'film');
  const [title = ''] = film.flatMap(headings);
  return { title, asks: film.flatMap(paragraphs) };
}
