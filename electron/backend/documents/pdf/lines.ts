import type { Inline } from '../../../../engine/document/document.ts';
import { fromLeftToRight, levelOf, mirrored, type WritingOrder } from '../../lettering/writingOrder.ts';
import { type Faces, type Run, runsFromRight } from './fonts.ts';
import { cutWord, type Style, wordsOf } from './words.ts';

export type { Style } from './words.ts';

/** A stretch of a line as it is drawn, `x` points to the right of the line's place. */
export type PositionedRun = Run & { readonly x: number };

/** One line of set text: runs in the order in which they are read, spaces included; the ink begins `left` points in. */
export type Line = { readonly runs: readonly PositionedRun[]; readonly left: number; readonly width: number };

/** Neighbours of one font become one run, so that what is copied out of the document reads on. */
function merge(runs: readonly Run[]): Run[] {
  const merged: Run[] = [];
  for (const run of runs) {
    const last = merged.at(-1);
    const goesOn = last?.font === run.font && last.level === run.level && last.actual === null && run.actual === null;
    if (last !== undefined && goesOn) merged.splice(-1, 1, { ...last, text: last.text + run.text });
    else merged.push(run);
  }
  return merged;
}

const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

/**
 * The fonts turn Hebrew and Arabic round by themselves, and nothing else. What is to run the other way, punctuation among
 * such words and figures in their own signs, is drawn one character at a time.
 */
const apart = (run: Run): readonly Run[] =>
  run.actual !== null || (run.level % 2 === 1) === runsFromRight(run.text)
    ? [run]
    : [...graphemes.segment(run.text)].map(({ segment }) => ({ ...run, text: segment }));

/** A run as its font is to draw it: brackets among words from right to left open the other way. */
const drawn = (run: Run): Run => (run.level % 2 === 0 ? run : { ...run, text: mirrored(run.text) });

/** Sets runs side by side in the order of both directions; `space` at the line's end is not counted. */
function layOut(
  runs: readonly Run[],
  space: readonly Run[],
  { order, size, width, faces }: { order: WritingOrder; size: number; width: number; faces: Faces },
): Line {
  const base = levelOf(order.direction);
  const all = merge([...runs, ...space.map((run) => ({ ...run, level: base }))]).flatMap(apart);
  const spaceWidth = space.reduce((sum, run) => sum + faces.width(run, size), 0);
  const widths = new Map(all.map((run) => [run, faces.width(run, size)]));
  const filled = [...widths.values()].reduce((sum, each) => sum + each, 0) - spaceWidth;
  const left = base === 1 ? Math.max(0, width - filled) : 0;
  const at = new Map<Run, number>();
  let x = base === 1 ? left - spaceWidth : left;
  for (const run of fromLeftToRight(all)) {
    at.set(run, x);
    x += widths.get(run) ?? 0;
  }
  return {
    runs: all.map((run) => ({ ...drawn(run), x: at.get(run) ?? 0 })),
    left,
    width: filled,
  };
}

/**
 * Sets text in lines of a width in points, broken at spaces and where scripts without them allow; words wider than a line are
 * cut. A paragraph that is read from right to left stands at the right.
 */
export function setLines(inlines: readonly Inline[], style: Style, width: number, faces: Faces): Line[] {
  const { words, order } = wordsOf(inlines, style, faces);
  const { size } = style;
  const lines: Line[] = [];
  let runs: Run[] = [];
  let filled = 0;
  for (const word of words.flatMap((each) => cutWord(each, width, size, faces))) {
    const space = runs.length === 0 || word.spaceBefore === null ? [] : [word.spaceBefore];
    const spaceWidth = space.reduce((sum, run) => sum + faces.width(run, size), 0);
    if (runs.length > 0 && filled + spaceWidth + word.width > width) {
      // The space at the end of a line is not seen, but keeps its words apart when they are read aloud or copied.
      lines.push(layOut(runs, space, { order, size, width, faces }));
      runs = [...word.runs];
      filled = word.width;
    } else {
      runs.push(...space, ...word.runs);
      filled += spaceWidth + word.width;
    }
  }
  if (runs.length > 0) lines.push(layOut(runs, [], { order, size, width, faces }));
  return lines;
}

/** Width of the text on one line, and of its widest word. */
export function extentOf(inlines: readonly Inline[], style: Style, faces: Faces): { natural: number; least: number } {
  const { words } = wordsOf(inlines, style, faces);
  const spaces = words.map((word) => (word.spaceBefore === null ? 0 : faces.width(word.spaceBefore, style.size)));
  return {
    natural: words.reduce((sum, word, index) => sum + word.width + (spaces[index] ?? 0), 0),
    least: Math.max(0, ...words.map((word) => word.width)),
  };
}
