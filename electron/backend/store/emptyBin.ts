import { rmSync } from 'node:fs';
import path from 'node:path';
import { sealHistory } from './acts.ts';
import { type Binned, listOverdue } from './bin.ts';
import { all, inTransaction, run, type Writing } from './connection.ts';
import { deleteForGood, isFootageFree } from './deleteForGood.ts';
import { framedPicturesName, type LibraryFolder } from './folder.ts';
import { findFootage } from './footage.ts';
import type { Library } from './library.ts';

/**
 * Deletes what has lain in the bin for longer than it stays there, one thing a transaction, so that requests are answered in
 * between; then the files that nothing shows any more. A file whose deletion fails is tried again at the next start.
 */
export async function emptyBin({ writing, folder }: Library, now: Date, isStopped: () => boolean): Promise<void> {
  for (const { kind, id } of listOverdue(writing, now)) {
    if (isStopped()) return;
    inTransaction(writing, () => deleteBinned(writing, kind, id));
    await new Promise(setImmediate);
  }
  removeFiles(writing, folder);
}

const clipsIn: Readonly<Record<Binned, string>> = {
  clip: 'clip.id = ?',
  entry: 'clip.entry_id = ?',
  session: 'clip.entry_id IN (SELECT id FROM entry WHERE session_id = ?)',
};

/** Deletes one thing that lies in the bin, with all that hangs on it; called within a transaction. */
function deleteBinned(writing: Writing, kind: Binned, id: string): void {
  const footage = all<{ id: string | null }>(
    writing,
    `SELECT DISTINCT footage_id AS id FROM clip WHERE ${clipsIn[kind]}`,
    id,
  );
  if (kind === 'session') {
    // Its acts go with it, out of the histories of others too.
    sealHistory(writing, id);
    run(
      writing,
      "INSERT OR IGNORE INTO file_to_remove SELECT 'handovers', file FROM handover WHERE session_id = ?",
      id,
    );
  }
  // A file whose clip is gone for good was thrown away: it doesn't lie in the inbox again.
  run(writing, `DELETE FROM arrival WHERE clip_id IN (SELECT clip.id FROM clip WHERE ${clipsIn[kind]})`, id);
  for (const clip of all<{ id: string }>(writing, `SELECT id FROM clip WHERE ${clipsIn[kind]}`, id)) {
    run(writing, "INSERT OR IGNORE INTO file_to_remove VALUES ('pictures', ?)", framedPicturesName(clip.id));
  }
  deleteForGood(writing, kind, id);
  for (const { id: footageId } of footage) if (footageId !== null) removeIfFree(writing, footageId);
}

function removeIfFree(writing: Writing, footageId: string): void {
  const footage = findFootage(writing, footageId);
  if (footage === undefined || !isFootageFree(writing, footageId)) return;
  const files = [
    ['clips', footage.file],
    ['clips', footage.proxy_file],
    ['pictures', footage.poster_file],
    ['pictures', footage.filmstrip_file],
  ] as const;
  for (const [folder, name] of files) {
    if (name !== null) run(writing, 'INSERT OR IGNORE INTO file_to_remove VALUES (?, ?)', folder, name);
  }
  run(writing, 'DELETE FROM footage WHERE id = ?', footageId);
}

function removeFiles(writing: Writing, folder: LibraryFolder): void {
  const files = all<{ folder: 'clips' | 'pictures' | 'handovers'; name: string }>(
    writing,
    'SELECT folder, name FROM file_to_remove',
  );
  for (const { folder: where, name } of files) {
    rmSync(path.join(folder[where], name), { force: true, recursive: true });
    run(writing, 'DELETE FROM file_to_remove WHERE folder = ? AND name = ?', where, name);
  }
}
