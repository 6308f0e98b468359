import { type Block, type Inline, plainText, type RacksideDocument } from '../../../../engine/document/document.ts';

/** Every word of a document, by the weight it is set in. */
export type DocumentWords = { readonly light: string; readonly strong: string };

type Said = { readonly light: readonly string[]; readonly strong: readonly string[] };

const light = (...words: readonly string[]): Said => ({ light: words, strong: [] });
const strong = (...words: readonly string[]): Said => ({ light: [], strong: words });

const ofLines = (lines: readonly (readonly Inline[])[]): readonly Said[] =>
  lines.flat().map((inline) => (inline.kind === 'strong' ? strong(plainText([inline])) : light(plainText([inline]))));

function ofBlock(block: Block): readonly Said[] {
  switch (block.kind) {
    case 'heading':
      return [strong(block.text)];
    case 'paragraph':
      return ofLines([block.inlines]);
    case 'list':
      return ofLines(block.items);
    case 'table':
      return [light(block.caption), strong(...block.columns.map(({ label }) => label)), ...ofLines(block.rows.flat())];
    case 'picture':
      return [light(block.caption, block.alt)];
    case 'notice':
      return [strong(block.title), ...ofLines(block.paragraphs)];
  }
}

/** The words that a document is set in, so that its fonts can be opened before it is. */
export function documentWords({ title, blocks }: RacksideDocument): DocumentWords {
  const said = [light(title), strong(title), ...blocks.flatMap(ofBlock)];
  return {
    light: said.flatMap((each) => each.light).join(' '),
    strong: said.flatMap((each) => each.strong).join(' '),
  };
}
