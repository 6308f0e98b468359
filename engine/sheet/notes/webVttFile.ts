import type { Cue } from './layNotes.ts';
import { timestamp } from './timestamp.ts';

/** Cue text: `&`, `<` and `>` as entities, which also keeps the arrow out (W3C WebVTT, cue text). */
export const escapeCue = (line: string): string =>
  line.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** A comment may not hold the arrow (W3C WebVTT, comment block). */
const comment = (line: string): string => `NOTE ${line.replaceAll('-->', '->')}`;

const block = ({ id, startMs, endMs, lines }: Cue): string =>
  [id, `${timestamp(startMs, '.')} --> ${timestamp(endMs, '.')}`, ...lines.map(escapeCue)].join('\n');

/** A WebVTT file. The format has no field for the language, so that stands in the words that may follow its name. */
export function webVttFile(cues: readonly Cue[], about: { language: string; comments: readonly string[] }): string {
  return `${[`WEBVTT Language: ${about.language}`, ...about.comments.map(comment), ...cues.map(block)].join('\n\n')}\n`;
}
