import type { Catalogue } from '../exercises/catalogue.ts';
import type { Review } from '../review/review.ts';
import { type NotesOf, timedNotes } from './notes/timedNotes.ts';
import { webVttFile } from './notes/webVttFile.ts';

/**
 * The flags as WebVTT (W3C), laid over the clip as `layNotes` says; the cues of a flag are `note-ID-1`, `note-ID-2`
 * and so on. With a clip, its flags alone; without one, those of all clips, each naming its own. Flags of frames whose
 * time is not known are left out, and a comment counts them.
 */
export function sheetWebVtt(review: Review, catalogue: Catalogue, options: NotesOf = {}): string {
  const { cues, sheet, about, leftOut } = timedNotes(review, catalogue, options);
  const missing = sheet.say('leftOut', { count: String(leftOut) });
  return webVttFile(cues, { language: sheet.language, comments: leftOut === 0 ? [about] : [about, missing] });
}
