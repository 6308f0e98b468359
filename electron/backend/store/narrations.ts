import { readdir, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { type NarrationTrack, trackSchema } from '../../../engine/narration/narration.ts';
import { hashFile } from '../files/hashing.ts';
import { partSuffix } from '../files/writeWhole.ts';
import { binDays } from './bin.ts';
import type { Row } from './changes.ts';
import { all, first, inTransaction, type Reading, run, type Writing } from './connection.ts';
import type { LibraryFolder } from './folder.ts';
import type { Library } from './library.ts';
import { assertSound } from './rowDigests.ts';

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
  assertSound(reading, 'narration', clipId, 'partDamaged');
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

/** Names inside the folder of sounds of what was recorded over a clip, where no other clip's narration names it. */
export function soundsOnlyOf(reading: Reading, clipId: string): string[] {
  const row = narrationOfClip(reading, clipId);
  if (row === undefined) return [];
  const others = 'SELECT 1 FROM narration WHERE file = ? AND clip_id <> ?';
  const isShared = row.file !== null && first(reading, others, row.file, clipId) !== undefined;
  return [`recording-${row.id}`, ...(row.file === null || isShared ? [] : [row.file])];
}

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

/**
 * Compares the sounds of narrations with what the library knows of them; one sentence a finding. A sound that no narration names, and
 * what was recorded for one that is not being recorded, is left over.
 */
export async function verifySounds({
  reading,
  folder,
}: Pick<Library, 'reading' | 'folder'>): Promise<readonly string[]> {
  const rows = all<NarrationRow>(reading, 'SELECT * FROM narration ORDER BY file');
  const findings: string[] = [];
  for (const row of new Map(rows.map((one) => [one.file, one])).values()) {
    const finding = await judgeSound(folder, row);
    if (finding !== null) findings.push(finding);
  }
  const known = new Set(rows.map(({ id, state, file }) => (state === 'kept' ? file : `recording-${id}`)));
  const there = await readdir(folder.sounds).catch(() => []);
  const left = there.filter((name) => !known.has(name) && !name.endsWith(partSuffix)).sort();
  return [...findings, ...left.map((name) => `The file "sounds/${name}" belongs to no narration.`)];
}

async function judgeSound(folder: LibraryFolder, { file, sha256, size_bytes }: NarrationRow): Promise<string | null> {
  if (file === null) return null;
  const place = path.join(folder.sounds, file);
  const found = await stat(place).catch(() => undefined);
  if (!found?.isFile()) return `The file "sounds/${file}" is missing.`;
  const isSame = found.size === size_bytes && (await hashFile(place)) === sha256;
  return isSame ? null : `The file "sounds/${file}" is no longer what was recorded.`;
}
