import type { Catalogue } from '../exercises/catalogue.ts';
import type { Review } from '../review/review.ts';
import { type NotesOf, timedNotes } from './timedNotes.ts';
import { timestamp } from './webVttFile.ts';

/**
 * SubRip has no way to escape what players take for markup: tags, braces with a command, commands for a line's end,
 * and the arrow. A word joiner, which nobody sees, keeps each from being read as such.
 */
const harmless = (line: string): string =>
  line.replace(/<(?=[\p{L}/!])|\{(?=\\)|\\(?=[nNh])|--(?=>)/gu, (found) => `${found}\u2060`);

/**
 * The flags as SubRip, the de facto format of many players: the cues of `sheetWebVtt`, counted from 1, lines ended by
 * CR LF. No cues, no text. The format has no field for the language: name the file by it, `notes.en.srt`.
 */
export function sheetSubRip(review: Review, catalogue: Catalogue, options: NotesOf = {}): string {
  return timedNotes(review, catalogue, options)
    .cues.map(({ startMs, endMs, lines }, index) =>
      [index + 1, `${timestamp(startMs, ',')} --> ${timestamp(endMs, ',')}`, ...lines.map(harmless), ''].join('\r\n'),
    )
    .join('\r\n');
}
