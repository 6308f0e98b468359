import { sentence, tidy } from '../document/index.ts';
import type { Catalogue } from '../exercises/index.ts';
import type { Review } from '../review/index.ts';
import { type FlagRow, flagRows } from './flagRows.ts';
import { fill, type SheetLanguage, sheetLanguage } from './sheetLanguage.ts';

type Cue = { readonly startMs: number; readonly endMs: number; readonly lines: readonly string[] };

/** Shortest and longest time a note stays, and how fast people read (common practice of subtitling, no source). */
const shortestMs = 2500;
const longestMs = 7000;
const msPerCharacter = 60;

/** WebVTT timestamp: hours of two digits or more, minutes, seconds, exactly three decimals. */
function timestamp(ms: number): string {
  const two = (value: number) => String(Math.trunc(value)).padStart(2, '0');
  return `${two(ms / 3_600_000)}:${two((ms / 60_000) % 60)}:${two((ms / 1000) % 60)}.${String(ms % 1000).padStart(3, '0')}`;
}

/** Cue text: `&`, `<` and `>` as entities, which also keeps the arrow out (W3C WebVTT, cue text). */
const escapeCue = (line: string): string =>
  line.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** A comment may not hold the arrow (W3C WebVTT, comment block). */
const comment = (line: string): string => `NOTE ${line.replaceAll('-->', '->')}`;

function sayReps(row: FlagRow, { words }: SheetLanguage): string {
  if (row.reps === null) return words.inSet;
  return fill(row.reps.length === 1 ? words.inRep : words.inReps, { reps: row.reps.join(', ') });
}

type Naming = { readonly naming: 'each clip' | 'one clip'; readonly sheet: SheetLanguage };

function cueOf(row: FlagRow, us: number, clipEndUs: number | undefined, { naming, sheet }: Naming): Cue {
  const { words, weightText } = sheet;
  const head = [
    ...(naming === 'each clip' ? [row.clipName] : []),
    sayReps(row, sheet),
    row.criterionName,
    weightText(row.weight),
  ];
  const lines = [
    head.map(tidy).join(' · '),
    row.seen === '' ? '' : fill(words.seenLine, { seen: sentence(row.seen) }),
    sentence(row.note),
    row.cue === '' ? '' : fill(words.cueLine, { cue: sentence(row.cue) }),
  ].filter((line) => line !== '');
  const length = lines.reduce((sum, line) => sum + line.length, 0);
  const stayMs = Math.min(longestMs, Math.max(shortestMs, length * msPerCharacter));
  const startMs = Math.round(us / 1000);
  const clipEndMs = clipEndUs === undefined ? 0 : Math.floor(clipEndUs / 1000);
  if (clipEndMs === 0) return { startMs, endMs: startMs + stayMs, lines };
  // A note on the last moments starts earlier rather than vanish unread.
  return {
    startMs: Math.max(0, Math.min(startMs, clipEndMs - shortestMs)),
    endMs: Math.min(clipEndMs, Math.max(startMs, 0) + stayMs),
    lines,
  };
}

/** A note goes when the next one comes, once it could be read. */
function makeRoom(cue: Cue, index: number, cues: readonly Cue[]): Cue {
  const next = cues[index + 1];
  if (next === undefined) return cue;
  return { ...cue, endMs: Math.min(cue.endMs, Math.max(next.startMs, cue.startMs + shortestMs)) };
}

/**
 * The flags as WebVTT (W3C): one cue a flag, in the order of their times, each long enough to read and none past the
 * clip's end. With a clip, its flags alone; without one, those of all clips, each cue naming its own. Flags of
 * frames whose time is not known are left out, and a comment counts them.
 */
export function sheetWebVtt(review: Review, catalogue: Catalogue, options: { readonly clipId?: string } = {}): string {
  const { clipId } = options;
  const clips = new Map(review.entries.flatMap((entry) => entry.clips).map((clip) => [clip.id, clip]));
  const several = clipId === undefined && clips.size > 1;
  const sheet = sheetLanguage(catalogue.language ?? 'en');
  const { words } = sheet;
  const naming: Naming = { naming: several ? 'each clip' : 'one clip', sheet };
  const rows = flagRows(review, catalogue).filter((row) => clipId === undefined || row.clip === clipId);
  const cues = rows
    .flatMap((row) => (row.us === null ? [] : [cueOf(row, row.us, clips.get(row.clip)?.facts?.durationUs, naming)]))
    .sort((a, b) => a.startMs - b.startMs)
    .map(makeRoom);
  const only = clipId === undefined ? [...clips.values()].at(0) : clips.get(clipId);
  const about = several ? words.timesOf : fill(words.timesOfOne, { clip: tidy(only?.name ?? '') });
  const blocks = [
    'WEBVTT',
    comment(about),
    ...(cues.length < rows.length ? [comment(fill(words.leftOut, { count: String(rows.length - cues.length) }))] : []),
    ...cues.map((cue, index) =>
      [`note-${index + 1}`, `${timestamp(cue.startMs)} --> ${timestamp(cue.endMs)}`, ...cue.lines.map(escapeCue)].join(
        '\n',
      ),
    ),
  ];
  return `${blocks.join('\n\n')}\n`;
}
