import type { Block, Inline, RacksideDocument } from '../document/document.ts';
import { plainText, text } from '../document/inlines.ts';
import { tidy } from '../document/tidy.ts';
import { type Letter, letterDocument } from './letter.ts';

/** A paragraph in the coach's own words, with what it said by itself when it was edited. */
export type LetterEdit = { readonly paragraph: string; readonly words: string; readonly basis: string };

/** One line of the letter as it is edited: headings stand between the paragraphs and stay as they are. */
export type EditableLine = {
  readonly id: string;
  readonly kind: 'heading' | 'paragraph';
  /** The label or grade that opens it and stays; '' where it has none. */
  readonly label: string;
  /** What it says, without its label. */
  readonly words: string;
  /** What it says by itself. */
  readonly own: string;
  readonly edited: boolean;
  /** What it said by itself when it was edited is not what it says now. */
  readonly stale: boolean;
};

export type EditedLetter = {
  /** Section by section, in the coach's words. */
  readonly letter: Letter;
  readonly document: RacksideDocument;
  readonly lines: readonly EditableLine[];
  /** Edits of paragraphs that the letter does not have now. */
  readonly waiting: readonly LetterEdit[];
};

type Paragraph = Extract<Block, { readonly kind: 'paragraph' }>;

/** A label or a grade that opens a paragraph: it stays when the words after it are edited. */
function split({ inlines }: Paragraph): { readonly label: readonly Inline[]; readonly rest: readonly Inline[] } {
  const [first, ...rest] = inlines;
  return first?.kind === 'strong' && rest.length > 0 ? { label: [first], rest } : { label: [], rest: inlines };
}

const ownWords = (paragraph: Paragraph): string => plainText(split(paragraph).rest).trim();

/** Where words name a moment: its clock, not a part of a longer one. -1 where they don't. */
const placeOf = (words: string, clock: string): number =>
  words.search(new RegExp(`(?<![\\d:])${clock.replace(/[^\d:]/g, '\\$&')}(?![\\d:])`));

/** The coach's words, with the moments that the paragraph pointed at still pointed at where they are named again. */
function withMoments(words: string, inlines: readonly Inline[]): Inline[] {
  const [moment, ...others] = inlines.filter((inline) => inline.kind === 'time');
  if (moment === undefined) return words === '' ? [] : [text(words)];
  const at = placeOf(words, moment.text);
  if (at < 0) return withMoments(words, others);
  const after = words.slice(at + moment.text.length);
  return [...withMoments(words.slice(0, at), others), moment, ...withMoments(after, others)];
}

function inOtherWords(paragraph: Paragraph, words: string): Paragraph {
  const { label, rest } = split(paragraph);
  const space = label.length === 0 ? [] : [text(' ')];
  return { ...paragraph, inlines: [...label, ...space, ...withMoments(tidy(words), rest)] };
}

/**
 * Puts the coach's words in place of the paragraphs they were written for. Labels, grades, tables and notices stay as
 * they are. An edit whose paragraph says something else by itself now still counts and is told as stale; one whose
 * paragraph is gone waits for it.
 */
export function applyEdits(letter: Letter, edits: readonly LetterEdit[]): EditedLetter {
  const blocks = letter.sections.flatMap((section) => section.blocks);
  const present = new Set(blocks.flatMap((block) => (block.kind === 'paragraph' ? [block.id] : [])));
  const byParagraph = new Map(edits.map((edit) => [edit.paragraph, edit]));
  const inCoachsWords = (block: Block): Block => {
    const edit = block.kind === 'paragraph' ? byParagraph.get(block.id) : undefined;
    return block.kind === 'paragraph' && edit !== undefined ? inOtherWords(block, edit.words) : block;
  };
  const sections = letter.sections.map(({ id, blocks: own }) => ({ id, blocks: own.map(inCoachsWords) }));
  const edited = { ...letter, sections };
  return {
    letter: edited,
    document: letterDocument(edited),
    lines: blocks.flatMap((block) => linesOf(block, byParagraph)),
    waiting: edits.filter((edit) => !present.has(edit.paragraph)),
  };
}

function linesOf(block: Block, edits: ReadonlyMap<string, LetterEdit>): EditableLine[] {
  if (block.kind === 'heading') {
    const said = { label: '', words: block.text, own: block.text };
    return [{ id: block.id, kind: 'heading', ...said, edited: false, stale: false }];
  }
  if (block.kind !== 'paragraph') return [];
  const own = ownWords(block);
  const edit = edits.get(block.id);
  const stale = edit !== undefined && edit.basis !== own;
  const said = { label: plainText(split(block).label), words: edit?.words ?? own, own };
  return [{ id: block.id, kind: 'paragraph', ...said, edited: edit !== undefined, stale }];
}
