import type { Inline } from '../../../../engine/document/document.ts';
import { unspacedBreaks } from '../../lettering/lineBreaks.ts';
import { type WritingOrder, writingOrderOf } from '../../lettering/writingOrder.ts';
import type { Face } from './fontFiles.ts';
import { type Faces, type Run, runsFromRight, settable } from './fonts.ts';

export type Style = {
  readonly size: number;
  readonly leading: number;
  readonly face: Face;
  /** The face of times; that of the text around them where it isn't given. */
  readonly times?: Face;
};

/** What stays on one line, as it is read. */
export type Word = { readonly runs: readonly Run[]; readonly width: number; readonly spaceBefore: Run | null };

const faceOf = (inline: Inline, style: Style): Face => {
  switch (inline.kind) {
    case 'text':
      return style.face;
    case 'strong':
      return 'strong';
    case 'emphasis':
      return 'emphasis';
    case 'time':
      return style.times ?? style.face;
  }
};

type Stretch = { readonly text: string; readonly from: number };

/** Cuts a stretch of a paragraph before each of its places for which `cutsAt` says so. */
function cutWhere({ text, from }: Stretch, cutsAt: (index: number) => boolean): Stretch[] {
  const stretches: Stretch[] = [];
  let begun = 0;
  for (let index = 1; index <= text.length; index += 1) {
    if (index < text.length && !cutsAt(from + index)) continue;
    stretches.push({ text: text.slice(begun, index), from: from + begun });
    begun = index;
  }
  return stretches;
}

/** A space between words from right to left, set in their own font where one of them is beside it: they are drawn as one. */
function spaceIn(beside: readonly (Run | undefined)[], space: Run): Run {
  const word = beside.find((run) => run?.level === space.level && runsFromRight(run.text));
  return word === undefined || space.level % 2 === 0 ? space : { ...space, font: word.font };
}

export type Words = { readonly words: readonly Word[]; readonly order: WritingOrder };

/**
 * The words of a paragraph in order, and how they are read; a word may change its face midway, as in a time within
 * brackets. Text that is written without spaces is one word for each place where it can be broken.
 */
export function wordsOf(inlines: readonly Inline[], style: Style, faces: Faces): Words {
  const pieces = inlines.map((inline) => ({ text: settable(inline.text), face: faceOf(inline, style) }));
  const paragraph = pieces.map(({ text }) => text).join('');
  const order = writingOrderOf(paragraph);
  const breaks = unspacedBreaks(paragraph);
  const words: Word[] = [];
  let runs: Run[] = [];
  let space: Run | null = null;
  const close = () => {
    if (runs.length === 0) return;
    const width = runs.reduce((sum, run) => sum + faces.width(run, style.size), 0);
    const [first] = runs;
    words.push({ runs, width, spaceBefore: space && spaceIn([words.at(-1)?.runs.at(-1), first], space) });
    runs = [];
    space = null;
  };
  let from = 0;
  for (const { text, face } of pieces) {
    for (const part of text.split(/( +)/)) {
      if (part.startsWith(' ')) {
        close();
        if (words.length > 0) space = faces.runs(' ', face, order.levelAt(from))[0] ?? null;
      } else if (part !== '') {
        for (const piece of cutWhere({ text: part, from }, (index) => breaks.has(index))) {
          if (breaks.has(piece.from)) close();
          for (const level of cutWhere(piece, (index) => order.levelAt(index) !== order.levelAt(index - 1))) {
            runs.push(...faces.runs(level.text, face, order.levelAt(level.from)));
          }
        }
      }
      from += part.length;
    }
  }
  close();
  return { words, order };
}

const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

/** Cuts a word that is wider than a line, at graphemes. */
export function cutWord(word: Word, width: number, size: number, faces: Faces): Word[] {
  if (word.width <= width) return [word];
  const pieces: Word[] = [];
  let runs: Run[] = [];
  let filled = 0;
  const close = () => {
    if (runs.length > 0)
      pieces.push({ runs, width: filled, spaceBefore: pieces.length === 0 ? word.spaceBefore : null });
    runs = [];
    filled = 0;
  };
  for (const run of word.runs) {
    const actual = run.actual === null ? null : [...graphemes.segment(run.actual)].map(({ segment }) => segment);
    const widthOf = (text: string) => (text === '' ? 0 : faces.width({ ...run, text }, size));
    const isJoined = runsFromRight(run.text);
    let begun: Run | null = null;
    /** What the next letter's width depends on: in a script that joins them all letters so far, else the last. */
    let context = '';
    [...graphemes.segment(run.text)].forEach(({ segment }, index) => {
      const own = widthOf(context + segment) - widthOf(context);
      const isFull = filled + own > width && runs.length > 0;
      if (isFull) close();
      if (isFull || begun === null) {
        begun = { ...run, text: '', actual: actual && '' };
        context = '';
      } else {
        runs.pop();
      }
      filled += widthOf(context + segment) - widthOf(context);
      begun = { ...begun, text: begun.text + segment, actual: actual && (begun.actual ?? '') + (actual[index] ?? '') };
      runs.push(begun);
      context = isJoined ? begun.text : segment;
    });
  }
  close();
  return pieces;
}
