import { type Block, type Inline, plainText, type RacksideDocument, text } from '../document/document.ts';
import { tidy } from '../document/words.ts';
import { type Letter, letterDocument } from './letter.ts';

/** A paragraph in the coach's own words. `basis` is the generated text that they replaced. */
export type LetterEdit = { readonly paragraph: string; readonly words: string; readonly basis: string };

/**
 * One line of the letter in the editor. Headings are shown between the paragraphs and can't be edited. Nor can what is
 * fixed: stop and pain notices, cautions, film requests that hold back, and the closing line.
 */
export type EditableLine = {
  readonly id: string;
  readonly kind: 'heading' | 'paragraph' | 'fixed';
  /** The label or grade it opens with, which can't be edited; '' where it has none. */
  readonly label: string;
  /** Its text without the label, edited or not. */
  readonly words: string;
  /** The generated text without the label. */
  readonly own: string;
  readonly edited: boolean;
  /** The generated text has changed since it was edited. */
  readonly stale: boolean;
};

export type EditedLetter = {
  /** Section by section, in the coach's words. */
  readonly letter: Letter;
  readonly document: RacksideDocument;
  readonly lines: readonly EditableLine[];
  /** Edits whose paragraph the letter doesn't have at the moment. */
  readonly waiting: readonly LetterEdit[];
};

type Paragraph = Extract<Block, { readonly kind: 'paragraph' }>;

const isEditable = (block: Block): block is Paragraph => block.kind === 'paragraph' && block.fixed !== true;

/** Splits a paragraph into the label or grade it opens with, which stays when it is edited, and the rest. */
function split({ inlines }: Paragraph): { readonly label: readonly Inline[]; readonly rest: readonly Inline[] } {
  const [first, ...rest] = inlines;
  return first?.kind === 'strong' && rest.length > 0 ? { label: [first], rest } : { label: [], rest: inlines };
}

const ownWords = (paragraph: Paragraph): string => plainText(split(paragraph).rest).trim();

/** Where words name a moment by its clock, with or without thousandths; null where they don't. */
const namedClock = (words: string, clock: string): RegExpExecArray | null =>
  new RegExp(`(?<![\\d:])${clock.replace(/[^\d:]/g, '\\$&')}(?:[.,]\\d{1,3})?(?![\\d:])`).exec(words);

/** The coach's words, linked to the paragraph's moments wherever they name one of them. */
function withMoments(words: string, inlines: readonly Inline[]): Inline[] {
  const [moment, ...others] = inlines.filter((inline) => inline.kind === 'time');
  if (moment === undefined) return words === '' ? [] : [text(words)];
  const named = namedClock(words, moment.text);
  if (named === null) return withMoments(words, others);
  const [clock] = named;
  const after = words.slice(named.index + clock.length);
  return [
    ...withMoments(words.slice(0, named.index), others),
    { ...moment, text: clock },
    ...withMoments(after, others),
  ];
}

function inOtherWords(paragraph: Paragraph, words: string): Paragraph {
  const { label, rest } = split(paragraph);
  const space = label.length === 0 ? [] : [text(' ')];
  return { ...paragraph, inlines: [...label, ...space, ...withMoments(tidy(words), rest)] };
}

/**
 * Puts the coach's words in place of the paragraphs they were written for. Labels, grades, tables and all that is fixed
 * stay as they are, whatever edits there are. An edit still counts when its generated text has changed, but is marked stale; an edit whose paragraph is
 * gone is kept for when it comes back.
 */
export function applyEdits(letter: Letter, edits: readonly LetterEdit[]): EditedLetter {
  const blocks = letter.sections.flatMap((section) => section.blocks);
  const present = new Set(blocks.filter(isEditable).map(({ id }) => id));
  const byParagraph = new Map(edits.map((edit) => [edit.paragraph, edit]));
  const inCoachsWords = (block: Block): Block => {
    if (!isEditable(block)) return block;
    const edit = byParagraph.get(block.id);
    return edit === undefined ? block : inOtherWords(block, edit.words);
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

/** A line that stays as it is. */
const standing = (kind: 'heading' | 'fixed', id: string, label: string, words: string): EditableLine => {
  return { id, kind, label, words, own: words, edited: false, stale: false };
};

function linesOf(block: Block, edits: ReadonlyMap<string, LetterEdit>): EditableLine[] {
  switch (block.kind) {
    case 'heading':
      return [standing('heading', block.id, '', block.text)];
    case 'notice':
      return [
        standing('heading', block.id, '', block.title),
        ...block.paragraphs.map((line, at) => standing('fixed', `${block.id}-${at + 1}`, '', plainText(line))),
      ];
    case 'paragraph':
      return [
        block.fixed === true ? standing('fixed', block.id, '', plainText(block.inlines)) : paragraphLine(block, edits),
      ];
    case 'list':
    case 'table':
    case 'picture':
      return [];
  }
}

function paragraphLine(block: Paragraph, edits: ReadonlyMap<string, LetterEdit>): EditableLine {
  const own = ownWords(block);
  const edit = edits.get(block.id);
  const stale = edit !== undefined && edit.basis !== own;
  const said = { label: plainText(split(block).label), words: edit?.words ?? own, own };
  return { id: block.id, kind: 'paragraph', ...said, edited: edit !== undefined, stale };
}
