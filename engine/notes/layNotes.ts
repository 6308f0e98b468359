import { visibleLength } from './subtitleLines.ts';

/** A note to be read over the clip, wanted from a moment on, in media milliseconds. */
export type TimedNote = { readonly id: string; readonly wantMs: number; readonly lines: readonly string[] };

/** Lines shown from one moment to another. */
export type Cue = {
  readonly id: string;
  readonly startMs: number;
  readonly endMs: number;
  readonly lines: readonly string[];
};

/** Figures of subtitling (common practice, from memory). */
const mostLines = 2;
const shortestMs = 1500;
const longestMs = 7000;
const charactersPerSecond = 17;
/** What it takes to notice a note before it is read; given where there is room. */
const noticeMs = 1000;
/** How much earlier than its moment a note may come, so that it can be read before the clip is over. */
const mostEarlyMs = 3000;

/** From the pace at which notes can be read at leisure (2), over that at which they can be read (1), to the least (0). */
const paces = [2, 1.75, 1.5, 1.25, 1, 0.75, 0.5, 0.25, 0] as const;

/** A note with the length of each of its lines, computed once. */
type Measured = TimedNote & { readonly lengths: readonly number[] };

/** What notes give up for room, one after the other: their pace, then their moment for what it takes to read them. */
const concessions = [
  ...paces.map((pace) => ({ pace, earlyMs: 0 })),
  ...paces.filter((pace) => pace <= 1).map((pace) => ({ pace, earlyMs: mostEarlyMs })),
];

type Slot = { readonly id: string; readonly wantMs: number; readonly lines: readonly string[]; readonly ms: number };

type Squeeze = {
  /** The first note that gives way. */
  readonly from: number;
  /** How many cues such a note may be split into. */
  readonly mostCues: number;
  readonly pace: number;
};

const cuesOf = ({ lines }: TimedNote): number => Math.ceil(lines.length / mostLines);

function clampMs(ms: number): number {
  return Math.min(longestMs, Math.max(shortestMs, Math.ceil(ms)));
}

function stayMs(lengths: readonly number[], pace: number): number {
  const readingMs = (lengths.reduce((sum, length) => sum + length, 0) * 1000) / charactersPerSecond;
  const [read, leisure] = [clampMs(readingMs), clampMs(readingMs + noticeMs)];
  return Math.round(
    pace <= 1 ? shortestMs + pace * (read - shortestMs) : read + (pace - 1) * Math.max(0, leisure - read),
  );
}

function slotsOf(note: Measured, mostCues: number, pace: number): Slot[] {
  const perCue = Math.ceil(note.lines.length / Math.min(cuesOf(note), mostCues));
  return Array.from({ length: Math.ceil(note.lines.length / perCue) }, (_, index) => {
    const [from, to] = [index * perCue, (index + 1) * perCue];
    const ms = stayMs(note.lengths.slice(from, to), pace);
    return { id: `${note.id}-${index + 1}`, wantMs: note.wantMs, lines: note.lines.slice(from, to), ms };
  });
}

const squeezed = (notes: readonly Measured[], { from, mostCues, pace }: Squeeze): Slot[] =>
  notes.flatMap((note, index) => (index < from ? slotsOf(note, Infinity, 2) : slotsOf(note, mostCues, pace)));

/** Lays slots one after another, each at its moment or when the one before is over, all before the end; null where they don't fit. */
function layInTurn(slots: readonly Slot[], endMs: number, earlyMs: number): Cue[] | null {
  let leftMs = slots.reduce((sum, { ms }) => sum + ms, 0);
  let overMs = 0;
  const cues: Cue[] = [];
  for (const { id, wantMs, lines, ms } of slots) {
    const startMs = Math.min(Math.max(wantMs, overMs), endMs - leftMs);
    leftMs -= ms;
    if (startMs < Math.max(0, wantMs - earlyMs)) return null;
    overMs = startMs + ms;
    cues.push({ id, startMs, endMs: overMs, lines });
  }
  return cues;
}

/** The first of the notes at the end that push one another on. */
function lastRun(notes: readonly Measured[]): number {
  let [first, overMs] = [0, 0];
  for (const [index, note] of notes.entries()) {
    if (note.wantMs >= overMs) first = index;
    const lengthMs = slotsOf(note, Infinity, 2).reduce((sum, { ms }) => sum + ms, 0);
    overMs = Math.max(note.wantMs, overMs) + lengthMs;
  }
  return first;
}

/** Neighbours in one cue, so that each of the cues left can stay long enough to be read. */
function share(notes: readonly Measured[], count: number): Measured[] {
  const groups = Map.groupBy(notes.keys(), (index) => Math.floor((index * count) / notes.length));
  return [...groups.values()].flatMap((indices) => {
    const members = indices.flatMap((index) => notes[index] ?? []);
    const [first] = members;
    const [lines, lengths] = [members.flatMap((one) => one.lines), members.flatMap((one) => one.lengths)];
    return first === undefined ? [] : [{ ...first, lines, lengths }];
  });
}

/**
 * Lays notes over a clip: at most two lines a cue, what is longer in the cues that follow; each stays 1.5 to 7 seconds,
 * long enough to be read at 17 characters a second; none hides another: it waits until the one before is over. Where the
 * clip has no room for that, this gives way, in this order: the pace of the notes that crowd its end; their moments, by
 * 3 seconds at most; the two lines of their cues; at last their moments altogether, and neighbours share a cue. All
 * words are kept, and no cue ends after the clip. Notes are in the order of their moments, none without lines;
 * `clipEndMs` null = not known.
 */
export function layNotes(notes: readonly TimedNote[], clipEndMs: number | null): Cue[] {
  const endMs = clipEndMs === null || clipEndMs <= 0 ? Infinity : clipEndMs;
  const wanted = notes.map((note) => ({
    ...note,
    wantMs: Math.min(Math.max(0, note.wantMs), endMs),
    lengths: note.lines.map(visibleLength),
  }));
  const atLeisure = layInTurn(squeezed(wanted, { from: Infinity, mostCues: 1, pace: 2 }), endMs, 0);
  if (atLeisure !== null) return atLeisure;
  const starts = [...new Set([lastRun(wanted), 0])];
  for (let mostCues = Math.max(...wanted.map(cuesOf)); mostCues >= 1; mostCues -= 1) {
    for (const from of starts) {
      const least = wanted.slice(from).reduce((sum, note) => sum + Math.min(cuesOf(note), mostCues), 0) * shortestMs;
      if (least > endMs) continue;
      for (const { pace, earlyMs } of concessions) {
        const cues = layInTurn(squeezed(wanted, { from, mostCues, pace }), endMs, earlyMs);
        if (cues !== null) return cues;
      }
    }
  }
  return crowd(wanted, endMs);
}

/** Where a clip has no room for one cue a note: as many cues as it has room for. */
function crowd(notes: readonly Measured[], endMs: number): Cue[] {
  const room = Math.max(1, Math.floor(endMs / shortestMs));
  const few = notes.length > room ? share(notes, room) : notes;
  for (const pace of paces) {
    const cues = layInTurn(squeezed(few, { from: 0, mostCues: 1, pace }), endMs, Infinity);
    if (cues !== null) return cues;
  }
  const lines = few.flatMap((note) => note.lines);
  return [{ id: `${few[0]?.id ?? 'note'}-1`, startMs: 0, endMs, lines }];
}
