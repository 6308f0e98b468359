import type { Block, RacksideDocument } from '../document/document.ts';

/** The sections of a letter, in order. A section with nothing to say is left out. */
export const sectionIds = [
  'opening',
  'overall',
  'notices',
  'keep',
  'since',
  'change',
  'exercises',
  'programme',
  'film',
  'cautions',
  'closing',
] as const;
export type SectionId = (typeof sectionIds)[number];

export type LetterSection = { readonly id: SectionId; readonly blocks: readonly Block[] };

/** A finished letter, section by section. */
export type Letter = Omit<RacksideDocument, 'blocks' | 'fits'> & { readonly sections: readonly LetterSection[] };

/** The blocks of a section; none where the letter leaves it out. */
export const blocksOf = ({ sections }: Letter, id: SectionId): readonly Block[] =>
  sections.find((section) => section.id === id)?.blocks ?? [];

/** A letter as one document, its sections one after the other. */
export function letterDocument({ sections, ...head }: Letter): RacksideDocument {
  return { ...head, blocks: sections.flatMap(({ blocks }) => blocks) };
}
