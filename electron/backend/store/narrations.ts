import { rm } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { type NarrationTrack, trackSchema } from '../../../engine/narration/narration.ts';
import { binDays } from './bin.ts';
import type { Row } from './changes.ts';
import { all, first, inTransaction, type Reading, run, type Writing } from './connection.ts';
import type { LibraryFolder } from './folder.ts';
import type { Library } from './library.ts';

/** What a coach said over a clip. `recording`: it is not kept yet, and has neither file nor track. */
export type NarrationRow = Row & {
  readonly id: string;
  readonly clip_id: string;
  readonly state: 'recording' | 'kept';
  readonly made_at: string;
  readonly shown_width: number;
  readonly shown_height: number;
  readonly lasts_us: number;
  /** Name inside the folder of sounds. */
  readonly file: string | null;
  readonly sha256: string | null;
  readonly size_bytes: number | null;
  readonly track: string | null;
};

/** A narration, or undefined. */
export function findNarration(reading: Reading, narrationId: string): NarrationRow | undefined {
  return first<NarrationRow>(reading, 'SELECT * FROM narration WHERE id = ?', narrationId);
}

/** The narration of a clip, or undefined. */
export function narrationOfClip(reading: Reading, clipId: string): NarrationRow | undefined {
  return first<NarrationRow>(reading, 'SELECT * FROM narration WHERE clip_id = ?', clipId);
}

/** A narration that is kept, with its sound's file and its track. */
export type KeptNarration = {
  readonly row: NarrationRow;
  readonly soundFile: string;
  readonly track: NarrationTrack;
};

/** The narration of a clip where it is kept, or undefined. */
export function keptNarration(
  { reading, folder }: Pick<Library, 'reading' | 'folder'>,
  clipId: string,
): KeptNarration | undefined {
  const row = narrationOfClip(reading, clipId);
  if (row === undefined || row.file === null || row.track === null) return undefined;
  return {
    row,
    soundFile: path.join(folder.sounds, row.file),
    track: v.parse(trackSchema, JSON.parse(row.track)),
  };
}

/** Begins a narration. It is no act: nobody undoes what was said. */
export function insertNarration(
  writing: Writing,
  narration: Pick<NarrationRow, 'id' | 'clip_id' | 'made_at' | 'shown_width' | 'shown_height'>,
): void {
  run(
    writing,
    `INSERT INTO narration (id, clip_id, state, made_at, shown_width, shown_height, lasts_us)
      VALUES (?, ?, 'recording', ?, ?, ?, 0)`,
    ...[narration.id, narration.clip_id, narration.made_at, narration.shown_width, narration.shown_height],
  );
}

/** Notes that a narration is whole. */
export function keepNarration(
  writing: Writing,
  narrationId: string,
  {
    file,
    sha256,
    sizeBytes,
    track,
  }: {
    readonly file: string;
    readonly sha256: string;
    readonly sizeBytes: number;
    readonly track: NarrationTrack;
  },
): void {
  run(
    writing,
    "UPDATE narration SET state = 'kept', lasts_us = ?, file = ?, sha256 = ?, size_bytes = ?, track = ? WHERE id = ?",
    ...[track.lastsUs, file, sha256, sizeBytes, JSON.stringify(track), narrationId],
  );
}

/** Where the pieces of a narration lie until it is kept. */
export const recordingFolder = (folder: LibraryFolder, narrationId: string): string =>
  path.join(folder.sounds, `recording-${narrationId}`);

/** Deletes narrations for good: their rows, then everything that was recorded for them. */
export async function discardNarrations(library: Library, rows: readonly NarrationRow[]): Promise<void> {
  const { writing, folder } = library;
  const files = inTransaction(writing, () => {
    for (const { id } of rows) run(writing, 'DELETE FROM narration WHERE id = ?', id);
    return rows.flatMap(({ file }) => (file !== null && !isUsed(writing, file) ? [file] : []));
  });
  for (const file of files) await rm(path.join(folder.sounds, file), { force: true });
  for (const { id } of rows) await rm(recordingFolder(folder, id), { recursive: true, force: true });
}

const isUsed = (reading: Reading, file: string): boolean =>
  first(reading, 'SELECT 1 FROM narration WHERE file = ?', file) !== undefined;

/** Deletes the narrations of clips that left the library for good: an undone import may bring a clip back for as long as the bin keeps one. */
export async function discardOrphans(library: Library, now: Date): Promise<void> {
  const before = new Date(now.getTime() - binDays * 86_400_000).toISOString();
  const rows = listOrphans(library.reading, before);
  if (rows.length > 0) await discardNarrations(library, rows);
}

/** The narrations of clips that are gone, made before an instant (ISO time). */
function listOrphans(reading: Reading, before: string): NarrationRow[] {
  return all<NarrationRow>(
    reading,
    'SELECT * FROM narration WHERE made_at < ? AND clip_id NOT IN (SELECT id FROM clip)',
    before,
  );
}
