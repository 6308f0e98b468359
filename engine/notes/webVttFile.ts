import type { Cue } from './layNotes.ts';

/** Cue text: `&`, `<` and `>` as entities, which also keeps the arrow out (W3C WebVTT, cue text). */
export const escapeCue = (line: string): string =>
  line.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** A comment may not hold the arrow (W3C WebVTT, comment block). */
const comment = (line: string): string => `NOTE ${line.replace(/-{2,}>/g, '->')}`;

const block = ({ id, startMs, endMs, lines }: Cue): string =>
  [id, `${timestamp(startMs, '.')} --> ${timestamp(endMs, '.')}`, ...lines.map(escapeCue)].join('\n');

/** A WebVTT file. The format has no field for the language, so the header's free text names it. */
export function webVttFile(cues: readonly Cue[], about: { language: string; comments: readonly string[] }): string {
  return `${[`WEBVTT Language: ${about.language}`, ...about.comments.map(comment), ...cues.map(block)].join('\n\n')}\n`;
}

/** A time in milliseconds as 00:01:02.345, with the mark that stands before the thousandths; hours go on past 99. */
export function timestamp(ms: number, mark: '.' | ','): string {
  const two = (value: number) => String(Math.trunc(value)).padStart(2, '0');
  const clock = [ms / 3_600_000, (ms / 60_000) % 60, (ms / 1000) % 60].map(two).join(':');
  return `${clock}${mark}${String(ms % 1000).padStart(3, '0')}`;
}
