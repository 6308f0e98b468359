import type { Inline } from './document.ts';

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
