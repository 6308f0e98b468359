import Database from 'better-sqlite3';
import { ProblemError } from '../../contract/reply.ts';
import type { LibraryFolder } from './folder.ts';

/** Held for as long as a library is open. */
export type LibraryLock = { readonly release: () => void };

/**
 * Takes the library for this process alone. The lock is the operating system's own, held on an empty file through
 * SQLite: a killed process lets go of it, and no stale process number can keep the library shut.
 *
 * Throws `library-busy` when another process, or another backend of this one, has it.
 */
export function lockLibrary(folder: LibraryFolder): LibraryLock {
  const holder = new Database(folder.lock, { timeout: 0 });
  try {
    // Keeps the transaction's journal out of the folder.
    holder.pragma('journal_mode = MEMORY');
    holder.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    holder.close();
    throw new ProblemError(
      'library-busy',
      `The library in "${folder.root}" is open in another Rackside, so nothing was changed; close that one and try again.`,
      { cause: error },
    );
  }
  return {
    release: () => {
      if (!holder.open) return;
      holder.exec('ROLLBACK');
      holder.close();
    },
  };
}
