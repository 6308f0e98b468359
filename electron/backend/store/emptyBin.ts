import { rmSync } from 'node:fs';
import path from 'node:path';
import { ProblemError } from '../../contract/reply.ts';
import { sealHistory } from './acts.ts';
import { footageOfArrival, forgetArrival, listOverdueArrivals, listRemovedArrivals } from './arrivals.ts';
import { type Binned, listInBin, listOverdue } from './bin.ts';
import { all, first, inTransaction, run, type Writing } from './connection.ts';
import { deleteForGood, isFootageFree } from './deleteForGood.ts';
import { framedPicturesName, type LibraryFolder } from './folder.ts';
import { findFootage } from './footage.ts';
import type { Library } from './library.ts';
import { soundsOnlyOf } from './narrations.ts';

/** Something that lies in the bin: what was removed from a session, or a file that was removed from the inbox. */
export type InBin = { readonly kind: Binned | 'file'; readonly id: string };

/**
 * Deletes what has lain in the bin for longer than it stays there, one thing a transaction, so that requests are answered in
 * between; then the files that nothing shows any more. A file whose deletion fails is tried again at the next start.
 */
export async function emptyBin({ writing, folder }: Library, now: Date, isStopped: () => boolean): Promise<void> {
  const files = listOverdueArrivals(writing, now).map((id) => ({ kind: 'file', id }) as const);
  for (const item of [...listOverdue(writing, now), ...files]) {
    if (isStopped()) return;
    inTransaction(writing, () => deleteItem(writing, item));
    await new Promise(setImmediate);
  }
  removeFiles(writing, folder);
}

/** Deletes all that lies in the bin at once, however long it has lain there; it can't be undone. */
export function emptyBinNow({ writing, folder }: Library): void {
  inTransaction(writing, () => {
    for (const item of listInBin(writing)) deleteItem(writing, item);
    for (const { id } of listRemovedArrivals(writing)) deleteItem(writing, { kind: 'file', id });
  });
  removeFiles(writing, folder);
}

/**
 * Deletes one thing that lies in the bin, at once; a session with its second looks. It can't be undone. Throws `not-found` for what
 * does not lie there.
 */
export function deleteNow({ writing, folder }: Library, item: InBin): void {
  inTransaction(writing, () => {
    const there = item.kind === 'file' ? listRemovedArrivals(writing) : listInBin(writing);
    if (!there.some(({ id }) => id === item.id)) throw new ProblemError('not-found', 'notInBin');
    const looks =
      item.kind === 'session'
        ? all<{ id: string }>(writing, 'SELECT id FROM session WHERE second_look_of = ?', item.id)
        : [];
    for (const { id } of looks) deleteItem(writing, { kind: 'session', id });
    deleteItem(writing, item);
  });
  removeFiles(writing, folder);
}

function deleteItem(writing: Writing, { kind, id }: InBin): void {
  if (kind === 'file') {
    const footageId = footageOfArrival(writing, id);
    forgetArrival(writing, id);
    if (footageId !== null) removeIfFree(writing, footageId);
  } else if (first(writing, `SELECT 1 FROM ${kind} WHERE id = ?`, id) !== undefined) deleteBinned(writing, kind, id);
}

const clipsIn: Readonly<Record<Binned, string>> = {
  clip: 'clip.id = ?',
  entry: 'clip.entry_id = ?',
  session: 'clip.entry_id IN (SELECT id FROM entry WHERE session_id = ?)',
};

/** Deletes one thing that lies in the bin, with all that hangs on it; called within a transaction. */
function deleteBinned(writing: Writing, kind: Binned, id: string): void {
  const clips = all<{ id: string; footage: string | null }>(
    writing,
    `SELECT id, footage_id AS footage FROM clip WHERE ${clipsIn[kind]}`,
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
  for (const { id: clipId } of clips) deleteBesideClip(writing, clipId);
  deleteForGood(writing, kind, id);
  const footage = new Set(clips.flatMap((clip) => clip.footage ?? []));
  for (const footageId of footage) removeIfFree(writing, footageId);
}

/** What knows a clip without pointing at its row: its narration, the file that it came from, jobs that have ended. */
function deleteBesideClip(writing: Writing, clipId: string): void {
  for (const sound of soundsOnlyOf(writing, clipId)) {
    run(writing, "INSERT OR IGNORE INTO file_to_remove VALUES ('sounds', ?)", sound);
  }
  run(writing, "INSERT OR IGNORE INTO file_to_remove VALUES ('pictures', ?)", framedPicturesName(clipId));
  run(writing, 'DELETE FROM narration WHERE clip_id = ?', clipId);
  run(writing, 'UPDATE clip SET same_set_as = NULL, same_set_offset_us = NULL WHERE same_set_as = ?', clipId);
  // A file whose clip is gone for good was thrown away: it lies in the inbox no more, and doesn't come in by itself again.
  const arrivals = all<{ id: string }>(writing, 'SELECT id FROM arrival WHERE clip_id = ?', clipId);
  for (const { id } of arrivals) forgetArrival(writing, id);
  run(writing, "DELETE FROM job WHERE clip_id = ? AND state NOT IN ('waiting', 'running')", clipId);
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
  const files = all<{ folder: 'clips' | 'pictures' | 'sounds' | 'handovers'; name: string }>(
    writing,
    'SELECT folder, name FROM file_to_remove',
  );
  for (const { folder: where, name } of files) {
    rmSync(path.join(folder[where], name), { force: true, recursive: true });
    rmSync(path.join(folder[where], name), { recursive: true, force: true });
    run(writing, 'DELETE FROM file_to_remove WHERE folder = ? AND name = ?', where, name);
  }
}
