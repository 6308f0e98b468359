import { sentence, tidy } from '../document/words.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import { endOfClipUs } from '../review/parts.ts';
import type { Clip, Review } from '../review/review.ts';
import { type FlagRow, flagRows } from '../sheet/flagRows.ts';
import { type SheetLanguage, sayReps, sheetLanguage } from '../sheet/sheetLanguage.ts';
import { type Cue, layNotes, type TimedNote } from './layNotes.ts';
import { subtitleLines } from './subtitleLines.ts';

/** The clip whose notes are wanted; without it, those of all clips, each naming its clip. */
export type NotesOf = { readonly clipId?: string };

/** The notes of a review laid over its clips. */
export type TimedNotes = {
  readonly cues: readonly Cue[];
  readonly sheet: SheetLanguage;
  /** What the notes are about, for a comment. */
  readonly about: string;
  /** How many remarks are left out because their time is not known. */
  readonly leftOut: number;
};

/** The lines of a flag: its clip, reps and criterion; what was seen and the coach's note; the cue. */
function linesOf(row: FlagRow, naming: 'each clip' | 'one clip', sheet: SheetLanguage): string[] {
  const { say, severityLine } = sheet;
  const head = [...(naming === 'each clip' ? [row.clipName] : []), sayReps(row, sheet), row.criterionName].map(tidy);
  const seen = row.seen === '' ? '' : say('seenLine', { seen: sentence(row.seen) });
  return [
    [...head, severityLine(row.severity)].join(' · '),
    [seen, sentence(row.note)].join(' ').trim(),
    row.cue === '' ? '' : say('cueLine', { cue: sentence(row.cue) }),
  ].flatMap(subtitleLines);
}

/** When a clip ends, in whole milliseconds that are over by then; null where that is not known. */
export function clipEndMs({ facts }: Clip): number | null {
  const endUs = endOfClipUs(facts);
  return endUs === null ? null : Math.floor(endUs / 1000);
}

/** The flags of a review as cues, in the order of their times in their own clips, in the catalogue's language. */
export function timedNotes(review: Review, catalogue: Catalogue, { clipId }: NotesOf): TimedNotes {
  const all = review.entries.flatMap((entry) => entry.clips);
  const clips = clipId === undefined ? all : all.filter((clip) => clip.id === clipId);
  const sheet = sheetLanguage(catalogue.language ?? 'en');
  const naming = clips.length > 1 ? 'each clip' : 'one clip';
  const rows = flagRows(review, catalogue).filter((row) => clipId === undefined || row.clip === clipId);
  const timed = rows.flatMap((row) => (row.us === null ? [] : [{ row, wantMs: Math.round(row.us / 1000) }]));
  // Each clip plays alone: its notes make way for one another, never for those of another clip.
  const cues = clips.flatMap((clip) => {
    const notes = timed
      .filter(({ row }) => row.clip === clip.id)
      .map(({ row, wantMs }): TimedNote => ({ id: `note-${row.flagId}`, wantMs, lines: linesOf(row, naming, sheet) }))
      .sort((one, other) => one.wantMs - other.wantMs);
    return layNotes(notes, clipEndMs(clip));
  });
  return {
    cues: cues.sort((one, other) => one.startMs - other.startMs),
    sheet,
    about:
      naming === 'each clip' ? sheet.say('timesOf') : sheet.say('timesOfOne', { clip: tidy(clips[0]?.name ?? '') }),
    leftOut: rows.length - timed.length,
  };
}
