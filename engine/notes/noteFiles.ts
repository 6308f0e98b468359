import { cautionsDue } from '../cautions/cautionsDue.ts';
import { sentence, tidy } from '../document/words.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import { momentUsInClip } from '../review/parts.ts';
import type { Clip, Review } from '../review/review.ts';
import { sheetLanguage } from '../sheet/sheetLanguage.ts';
import { cautionWording, sayerOf } from '../wording/wordings.ts';
import type { Cue } from './layNotes.ts';
import { clipEndMs, type NotesOf, timedNotes } from './timedNotes.ts';
import { timestamp, webVttFile } from './webVttFile.ts';

/**
 * The flags as WebVTT (W3C), laid over the clip as `layNotes` says; the cues of a flag are `note-ID-1`, `note-ID-2`
 * and so on. With a clip, its flags alone; without one, those of all clips, each naming its own. Flags of frames whose
 * time is not known are left out, and a comment counts them; the cautions of the session are comments too.
 */
export function sheetWebVtt(review: Review, catalogue: Catalogue, options: NotesOf = {}): string {
  const { cues, sheet, about, leftOut } = timedNotes(review, catalogue, options);
  const missing = sheet.say('leftOut', { count: String(leftOut) });
  const heed = cautionsDue(review, catalogue).map(({ topic, text }) => `${sentence(topic)} ${text}`);
  const closing = sayerOf(cautionWording, sheet.language)('closing');
  const comments = [about, ...(leftOut === 0 ? [] : [missing]), ...heed, closing];
  return webVttFile(cues, { language: sheet.language, comments });
}

/** Assumed length of a last rep when neither its end nor the clip's is known. */
const unknownMs = 5000;

const toMs = (us: number | null): number | null => (us === null ? null : Math.round(us / 1000));

function chaptersOf(clip: Clip, name: (rep: number) => string): Cue[] {
  const overMs = clipEndMs(clip) ?? Infinity;
  const reps = clip.reps
    .map((rep) => ({
      index: rep.index,
      startMs: toMs(momentUsInClip(rep.start, clip)),
      endMs: rep.end === undefined ? null : toMs(momentUsInClip(rep.end, clip)),
    }))
    .flatMap(({ startMs, ...rep }) => (startMs === null ? [] : [{ ...rep, startMs }]))
    .sort((a, b) => a.startMs - b.startMs || a.index - b.index);
  return reps.flatMap(({ index, startMs, endMs }, at) => {
    const nextMs = reps[at + 1]?.startMs ?? Infinity;
    const latestMs = Math.min(nextMs, overMs);
    const stopMs = Math.min(endMs ?? latestMs, latestMs);
    const lastMs = Number.isFinite(stopMs) ? stopMs : startMs + unknownMs;
    return lastMs > startMs ? [{ id: `rep-${index}`, startMs, endMs: lastMs, lines: [name(index)] }] : [];
  });
}

/**
 * The reps of a clip as a WebVTT file of chapters (W3C WebVTT, chapter cues: one line each, none over another), for
 * players that jump by them. A rep without an end lasts till the next one or the clip's end. A clip that the review
 * doesn't hold has no chapters.
 */
export function repChapters(review: Review, catalogue: Catalogue, { clipId }: { readonly clipId: string }): string {
  const { language, say } = sheetLanguage(catalogue.language ?? 'en');
  const clip = review.entries.flatMap((entry) => entry.clips).find(({ id }) => id === clipId);
  const cues = clip === undefined ? [] : chaptersOf(clip, (rep) => say('inReps', { count: 1, reps: rep }));
  return webVttFile(cues, { language, comments: [say('chaptersOf', { clip: tidy(clip?.name ?? '') })] });
}

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
