import { type Block, type Inline, plainText, type RacksideDocument, text } from '../document/document.ts';
import { tidy } from '../document/words.ts';
import { type Letter, letterDocument } from './letter.ts';
import {
  arranged,
  inSections,
  type LetterPart,
  type LetterShape,
  lineWords,
  partsOf,
  plannedShape,
  sectionsOfParts,
  withoutBareHeadings,
} from './shape.ts';

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
  /** The generated text has changed since it was edited; for the coach's own paragraph: what it rested on. */
  readonly stale: boolean;
  /** Whose paragraph it is: the plan's, or the coach's own beside it. */
  readonly writer: 'plan' | 'coach';
  /** The part of the letter it belongs to: its own id, or that of a notice with several lines. */
  readonly part: string;
};

type Line = Omit<EditableLine, 'part'>;

export type EditedLetter = {
  /** Section by section, in the coach's words. */
  readonly letter: Letter;
  readonly document: RacksideDocument;
  readonly lines: readonly EditableLine[];
  /** Paragraphs that the letter would have and the coach left out, in their places' order. */
  readonly leftOut: readonly EditableLine[];
  /** Ids of all parts as they are arranged now, with those left out. */
  readonly order: readonly string[];
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

/** Each line of what a coach typed, fit to print; one empty line where there is nothing. */
function linesOfWords(words: string): readonly string[] {
  const lines = words
    .split(/\r\n|[\n\r\u2028\u2029]/)
    .map(tidy)
    .filter((line) => line !== '');
  return lines.length === 0 ? [''] : lines;
}

/** A paragraph for each line that was typed; the first keeps the label. */
function inOtherWords(paragraph: Paragraph, words: string): Paragraph[] {
  const { label, rest } = split(paragraph);
  const space = label.length === 0 ? [] : [text(' ')];
  return linesOfWords(words).map((line, at) =>
    at === 0
      ? { ...paragraph, inlines: [...label, ...space, ...withMoments(line, rest)] }
      : { ...paragraph, id: `${paragraph.id}-break-${at + 1}`, inlines: withMoments(line, rest) },
  );
}

/** A part in the coach's words. One of the coach's own without words is not there yet. */
function worded(part: LetterPart, edits: ReadonlyMap<string, LetterEdit>): LetterPart {
  const { own } = part;
  if (own !== undefined) {
    const blocks =
      own.words.trim() === '' ? [] : inOtherWords({ kind: 'paragraph', id: own.id, inlines: [] }, own.words);
    return { ...part, blocks };
  }
  const edit = edits.get(part.id);
  if (edit === undefined) return part;
  return {
    ...part,
    blocks: part.blocks.flatMap((block): readonly Block[] =>
      isEditable(block) ? inOtherWords(block, edit.words) : [block],
    ),
  };
}

/** Pictures stand beside all that now follows them of what they were to stand beside, the coach's own paragraphs included. */
function besideAll(parts: readonly LetterPart[]): LetterPart[] {
  return parts.map((part, at) => {
    const [picture] = part.blocks;
    if (picture?.kind !== 'picture' || picture.beside === undefined) return part;
    const { beside } = picture;
    const after = parts.slice(at + 1);
    const end = after.findIndex(({ id, own }) => own === undefined && !beside.includes(id));
    const others = after
      .slice(0, end === -1 ? undefined : end)
      .flatMap(({ blocks }) => blocks.map(({ id }) => id))
      .filter((id) => !beside.includes(id));
    return others.length === 0 ? part : { ...part, blocks: [{ ...picture, beside: [...beside, ...others] }] };
  });
}

/**
 * Puts the coach's words in place of the paragraphs they were written for, and their own between them, in their order. Labels,
 * grades, tables, notices and all that is fixed stay as they are, whatever the coach made of the rest. An edit still counts when
 * its generated text has changed, but is marked stale; an edit whose paragraph is gone is kept for when it comes back.
 * `grounds` is what paragraphs of the coach's own rest on now.
 */
export function applyEdits(
  letter: Letter,
  edits: readonly LetterEdit[],
  shape: LetterShape = plannedShape,
  grounds = '',
): EditedLetter {
  const planned = partsOf(letter);
  const byParagraph = new Map(edits.map((edit) => [edit.paragraph, edit]));
  const present = new Set(planned.filter(({ moves }) => moves).map(({ id }) => id));
  const all = inSections(arranged(planned, shape), planned);
  const out = new Set(shape.leftOut);
  const isOut = ({ id, moves }: LetterPart): boolean => moves && out.has(id);
  const shaped = shape.leftOut.length > 0 || shape.order.length > 0;
  const kept = all.filter((part) => !isOut(part));
  const told = kept.filter(({ own }) => own === undefined || own.words.trim() !== '');
  const standingIds = new Set((shaped ? withoutBareHeadings(told) : told).map(({ id }) => id));
  const parts = besideAll(all.filter(({ id }) => standingIds.has(id)).map((part) => worded(part, byParagraph)));
  const edited = { ...letter, sections: sectionsOfParts(parts) };
  const lineOf = (part: LetterPart): EditableLine[] =>
    linesOf(part, byParagraph, grounds).map((line) => ({ ...line, part: part.id }));
  return {
    letter: edited,
    document: letterDocument(edited),
    lines: kept.filter(({ id, own }) => standingIds.has(id) || own !== undefined).flatMap(lineOf),
    leftOut: all.filter(isOut).flatMap(lineOf),
    order: all.map(({ id }) => id),
    waiting: edits.filter((edit) => !present.has(edit.paragraph)),
  };
}

/** A line that stays as it is. */
const standing = (kind: 'heading' | 'fixed', id: string, label: string, words: string): Line => {
  return { id, kind, label, words, own: words, edited: false, stale: false, writer: 'plan' };
};

function linesOf({ own, blocks }: LetterPart, edits: ReadonlyMap<string, LetterEdit>, grounds: string): Line[] {
  if (own !== undefined) {
    const stale = grounds !== '' && grounds !== own.basis;
    return [
      {
        ...{ id: own.id, kind: 'paragraph', label: '', words: own.words, own: '', edited: false },
        ...{ stale, writer: 'coach' },
      },
    ];
  }
  const [block] = blocks;
  switch (block?.kind) {
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
      return [standing('fixed', block.id, '', lineWords(block.items))];
    case 'table':
      return [standing('fixed', block.id, '', block.caption)];
    case 'picture':
    case undefined:
      return [];
  }
}

function paragraphLine(block: Paragraph, edits: ReadonlyMap<string, LetterEdit>): Line {
  const own = ownWords(block);
  const edit = edits.get(block.id);
  const stale = edit !== undefined && edit.basis !== own;
  const said = { label: plainText(split(block).label), words: edit?.words ?? own, own };
  return { id: block.id, kind: 'paragraph', ...said, edited: edit !== undefined, stale, writer: 'plan' };
}
