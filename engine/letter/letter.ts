import type { Block, RacksideDocument } from '../document/document.ts';
import type { Language } from '../language/language.ts';

/** How a coach's letter sounds; a self-review has one tone. */
export const tones = ['plain', 'warm', 'direct'] as const;
export type Tone = (typeof tones)[number];

export type LetterStyle = {
  /**
   * Short: the grade, one thing to keep, what was seen and the cue of each priority, the programme in a line each, the
   * cautions.
   */
  readonly length: 'full' | 'short';
  readonly tone: Tone;
  readonly language: Language;
};

/** A picture of a remark's moment: a file beside the letter by its relative name, or the picture as a data URL. */
export type Still = { readonly source: string; readonly widthPx: number; readonly heightPx: number };

/** Stills by the id of the flag each one shows. */
export type Stills = ReadonlyMap<string, Still>;

/** The sections of a letter, in order. A section with nothing to say is left out. */
export const sectionIds = [
  'opening',
  'pain',
  'unsafe',
  'overall',
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
  sections.filter((section) => section.id === id).flatMap(({ blocks }) => blocks);

/** A letter as one document, its sections one after the other. */
export function letterDocument({ sections, ...head }: Letter): RacksideDocument {
  return { ...head, blocks: sections.flatMap(({ blocks }) => blocks) };
}

/** Room for a part's name and a number after it, within the 80 characters of a paragraph's id. */
const mostLetters = 72;

/**
 * Ids for the paragraphs of one section, by what each is about, so that they stay with it when the order changes. Two
 * of the same key are numbered.
 */
export function paragraphIds(section: string, about: readonly { readonly key: string }[]): string[] {
  const names = about.map(({ key }) => `${section}-${key}`.slice(0, mostLetters));
  return names.map((name, at) => {
    const before = names.slice(0, at).filter((each) => each === name).length;
    return before === 0 ? name : `${name}-${before + 1}`;
  });
}
