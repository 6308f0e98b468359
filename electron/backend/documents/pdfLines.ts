import type { Inline } from '../../../engine/document/index.ts';
import type { Face, Faces, Run } from './pdfFonts.ts';

/** One line of set text: runs side by side, spaces included. */
export type Line = { readonly runs: readonly Run[]; readonly width: number };

export type Style = {
  readonly size: number;
  readonly leading: number;
  readonly face: Face;
  /** The face of times; that of the text around them where it isn't given. */
  readonly times?: Face;
};

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

type Word = { readonly runs: readonly Run[]; readonly width: number; readonly spaceBefore: Run | null };

const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

/** Words in order; a word may change its face midway, as in a time within brackets. */
function wordsOf(inlines: readonly Inline[], style: Style, faces: Faces): Word[] {
  const words: Word[] = [];
  let runs: Run[] = [];
  let space: Run | null = null;
  const close = () => {
    if (runs.length === 0) return;
    const width = runs.reduce((sum, run) => sum + faces.width(run, style.size), 0);
    words.push({ runs, width, spaceBefore: space });
    runs = [];
    space = null;
  };
  for (const inline of inlines) {
    const face = faceOf(inline, style);
    for (const part of inline.text.split(/([ \t\r\n]+)/)) {
      if (part === '') continue;
      if (/^[ \t\r\n]/.test(part)) {
        close();
        if (words.length > 0) space = faces.runs(' ', face)[0] ?? null;
      } else {
        runs.push(...faces.runs(part, face));
      }
    }
  }
  close();
  return words;
}

/** Cuts a word that is wider than a line, at graphemes. */
function cut(word: Word, width: number, size: number, faces: Faces): Word[] {
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
    [...graphemes.segment(run.text)].forEach(({ segment }, index) => {
      const piece: Run = { ...run, text: segment, actual: actual === null ? null : (actual[index] ?? '') };
      const own = faces.width(piece, size);
      if (filled + own > width) close();
      runs.push(piece);
      filled += own;
    });
  }
  close();
  return pieces;
}

/** Neighbours of one font become one run, so that what is copied out of the document reads on. */
function merge(runs: readonly Run[]): Run[] {
  const merged: Run[] = [];
  for (const run of runs) {
    const last = merged.at(-1);
    if (last !== undefined && last.font === run.font && last.actual === null && run.actual === null) {
      merged.splice(-1, 1, { ...last, text: last.text + run.text });
    } else {
      merged.push(run);
    }
  }
  return merged;
}

/** Sets text in lines of a width in points, broken at spaces; words wider than a line are cut. */
export function setLines(inlines: readonly Inline[], style: Style, width: number, faces: Faces): Line[] {
  const words = wordsOf(inlines, style, faces).flatMap((word) => cut(word, width, style.size, faces));
  const lines: Line[] = [];
  let runs: Run[] = [];
  let filled = 0;
  for (const word of words) {
    const space = runs.length === 0 || word.spaceBefore === null ? [] : [word.spaceBefore];
    const spaceWidth = space.reduce((sum, run) => sum + faces.width(run, style.size), 0);
    if (runs.length > 0 && filled + spaceWidth + word.width > width) {
      // The space at the end of a line is not seen, but keeps its words apart when they are read aloud or copied.
      lines.push({ runs: merge([...runs, ...space]), width: filled });
      runs = [...word.runs];
      filled = word.width;
    } else {
      runs.push(...space, ...word.runs);
      filled += spaceWidth + word.width;
    }
  }
  if (runs.length > 0) lines.push({ runs: merge(runs), width: filled });
  return lines;
}

/** Width of the text on one line, and of its widest word. */
export function extentOf(inlines: readonly Inline[], style: Style, faces: Faces): { natural: number; least: number } {
  const words = wordsOf(inlines, style, faces);
  const spaces = words.map((word) => (word.spaceBefore === null ? 0 : faces.width(word.spaceBefore, style.size)));
  return {
    natural: words.reduce((sum, word, index) => sum + word.width + (spaces[index] ?? 0), 0),
    least: Math.max(0, ...words.map((word) => word.width)),
  };
}
