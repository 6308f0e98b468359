import { upperFirst } from './words.ts';

/** Text within a block. A `time` piece points at a moment of a clip. */
export type Inline =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'strong'; readonly text: string }
  | { readonly kind: 'emphasis'; readonly text: string }
  | { readonly kind: 'time'; readonly clip: string; readonly us: number; readonly text: string };

/** A picture: a file beside the document by its relative name, or the picture itself as a data URL. */
export type Picture = {
  readonly kind: 'picture';
  readonly id: string;
  readonly source: string;
  /** Of the upright picture. */
  readonly size?: { readonly widthPx: number; readonly heightPx: number };
  /** Alternative text. */
  readonly alt: string;
  readonly caption: string;
  /**
   * Ids of the paragraphs and lists right after it that it stands beside; without it, it stands in a row with the pictures
   * before and after it.
   */
  readonly beside?: readonly string[];
};

/** A table; with bars it is a chart as well. */
export type Table = {
  readonly kind: 'table';
  readonly id: string;
  readonly caption: string;
  readonly columns: readonly { readonly label: string; readonly align: 'start' | 'end' }[];
  readonly rows: readonly (readonly (readonly Inline[])[])[];
  /** A bar within a column for each row, filled by its share, 0-1; null = not known. */
  readonly bars?: { readonly column: number; readonly shares: readonly (number | null)[] };
};

export type Block =
  | { readonly kind: 'heading'; readonly level: 2 | 3; readonly id: string; readonly text: string }
  /** `id` names what the paragraph is about, so that an edit can be kept under it; a fixed one can't be edited. */
  | { readonly kind: 'paragraph'; readonly id: string; readonly inlines: readonly Inline[]; readonly fixed?: true }
  | {
      readonly kind: 'list';
      readonly id: string;
      readonly ordered: boolean;
      readonly items: readonly (readonly Inline[])[];
    }
  | Table
  | Picture
  /** Set apart and never to be left out: cautions. */
  | {
      readonly kind: 'notice';
      readonly id: string;
      readonly title: string;
      readonly paragraphs: readonly (readonly Inline[])[];
    };

/** One document, from which every format is written. */
export type RacksideDocument = {
  readonly title: string;
  /** BCP 47. */
  readonly language: string;
  readonly author: string;
  /** ISO date of the session. */
  readonly date: string;
  /** Set smaller on paper, as far as it stays legible, so that one page holds it. */
  readonly fits?: 'onePage';
  readonly blocks: readonly Block[];
};

/** Plain words. */
export const text = (words: string): Inline => ({ kind: 'text', text: words });

/** Words that carry the line: labels, grades. */
export const strong = (words: string): Inline => ({ kind: 'strong', text: words });

/** Words set apart in the line: cues, quotations. */
export const emphasis = (words: string): Inline => ({ kind: 'emphasis', text: words });

/** A moment of a clip, in media microseconds, shown as `words`. */
export const stamp = (clip: string, us: number, words: string): Inline => ({ kind: 'time', clip, us, text: words });

/** The words of a line, without their marks. */
export const plainText = (inlines: readonly Inline[]): string => inlines.map((inline) => inline.text).join('');

/** The same line with neighbouring plain words as one piece. */
export function joined(inlines: readonly Inline[]): Inline[] {
  const line: Inline[] = [];
  for (const inline of inlines) {
    const last = line.at(-1);
    if (last?.kind === 'text' && inline.kind === 'text') line.splice(-1, 1, text(last.text + inline.text));
    else line.push(inline);
  }
  return line;
}

/** A line with a large first letter, for one that begins a sentence. */
export function upperFirstInline(inlines: readonly Inline[]): Inline[] {
  const [first, ...rest] = inlines;
  return first === undefined ? [] : [{ ...first, text: upperFirst(first.text) }, ...rest];
}
