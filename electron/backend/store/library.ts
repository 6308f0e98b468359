import { randomUUID } from 'node:crypto';
import { accessSync, constants, existsSync } from 'node:fs';
import Database from 'better-sqlite3';
import type { Voice } from '../../contract/library.ts';
import { ProblemError } from '../../contract/reply.ts';
import { makeFolder } from '../files/makeFolder.ts';
import { backUp } from './backup.ts';
import {
  abandon,
  closeReading,
  closeWriting,
  first,
  inTransaction,
  openReading,
  openWriting,
  type Reading,
  run,
  setNumberPragma,
  type Writing,
} from './connection.ts';
import { beginForOwner, closeFolder, type LibraryFolder, libraryFolder, makeFolders, sweepParts } from './folder.ts';
import { applicationId, inspectLibrary } from './inspect.ts';
import { migrate, readMigrations } from './migrations.ts';
import { followRows } from './rowDigests.ts';

/** An open library. */
export type Library = {
  readonly folder: LibraryFolder;
  readonly reading: Reading;
  readonly writing: Writing;
  /** How many files and folders of it were open to other users of the machine until it was opened. */
  readonly closedToOthers: number;
  /** Leaves one sound file behind; nothing may use the library afterwards. */
  readonly close: () => void;
};

/** Who the library belongs to. */
export type LibraryFacts = { readonly voice: Voice; readonly coach: string };

/**
 * Opens the library of a folder, migrating it if it is older; null when the folder holds none.
 *
 * Throws a ProblemError `library-busy`, `library-damaged`, `library-newer` or `disk`; the library is then as it was.
 */
export function openLibrary(root: string, appFolder: string): Library | null {
  const folder = libraryFolder(root);
  // A folder that holds no library stays as it is, without even a lock file.
  if (!existsSync(folder.database)) return null;
  const migrations = readMigrations(appFolder);
  return locked(folder, (lock) => {
    if (inspectLibrary(folder, migrations.length).kind === 'none') {
      lock.release();
      return null;
    }
    makeFolders(folder);
    sweepParts(folder);
    return connect({ folder, lock, closedToOthers: closeFolder(folder) }, (writing) => {
      migrate(writing, migrations, () => backUp(writing, folder, 'before-migration'));
      followRows(writing);
    });
  });
}

/** Makes a new, empty library in a folder, which is made too. Throws `conflict` when one is there already. */
export function createLibrary(root: string, appFolder: string, facts: LibraryFacts): Library {
  const folder = libraryFolder(root);
  const migrations = readMigrations(appFolder);
  try {
    makeFolder(folder.root);
    makeFolders(folder);
    closeFolder(folder);
  } catch (error) {
    throw onDisk(folder, error);
  }
  return locked(folder, (lock) => {
    if (inspectLibrary(folder, migrations.length).kind !== 'none') {
      throw new ProblemError('conflict', 'libraryThere', { folder: folder.root });
    }
    beginForOwner(folder.database);
    return connect({ folder, lock, closedToOthers: 0 }, (writing) => {
      // One transaction around all of it (each step inside becomes a savepoint): a whole library or nothing.
      inTransaction(writing, () => {
        setNumberPragma(writing, 'application_id', applicationId);
        migrate(writing, migrations, () => undefined);
        followRows(writing);
        writeFacts(writing, facts);
      });
    });
  });
}

/** Who the library belongs to. */
export function readLibraryFacts(connection: Reading): LibraryFacts {
  const facts = first<LibraryFacts>(connection, 'SELECT voice, coach FROM library');
  if (!facts) throw new Error('The library has no row about itself.');
  return facts;
}

/** Names the person whom a library belongs to anew. */
export function renameOwner(writing: Writing, name: string): void {
  run(writing, 'UPDATE library SET coach = ?', name);
}

type Held = Pick<Library, 'folder' | 'closedToOthers'> & { readonly lock: LibraryLock };

function connect({ folder, lock, closedToOthers }: Held, prepare: (writing: Writing) => void): Library {
  const writing = openWriting(folder.database);
  try {
    prepare(writing);
    const reading = openReading(folder.database);
    const close = () => {
      closeReading(reading);
      closeWriting(writing);
      lock.release();
    };
    return { folder, reading, writing, closedToOthers, close };
  } catch (error) {
    abandon(writing);
    throw error;
  }
}

function writeFacts(writing: Writing, facts: LibraryFacts): void {
  run(
    writing,
    'INSERT INTO library (only_row, id, created_at, voice, coach) VALUES (1, ?, ?, ?, ?)',
    randomUUID(),
    new Date().toISOString(),
    facts.voice,
    facts.coach,
  );
}

function locked<T>(folder: LibraryFolder, work: (lock: LibraryLock) => T): T {
  assertMayWrite(folder);
  let lock: LibraryLock | null = null;
  try {
    lock = lockLibrary(folder);
    return work(lock);
  } catch (error) {
    lock?.release();
    throw error instanceof ProblemError ? error : onDisk(folder, error);
  }
}

/** Throws `disk` where the system lets nobody write into the folder, or into the files of the library in it. */
function assertMayWrite(folder: LibraryFolder): void {
  try {
    for (const each of [folder.root, folder.database, folder.lock]) {
      if (existsSync(each)) accessSync(each, constants.W_OK);
    }
  } catch (cause) {
    throw new ProblemError('disk', 'libraryReadOnly', { folder: folder.root }, { cause });
  }
}

function onDisk(folder: LibraryFolder, cause: unknown): ProblemError {
  return new ProblemError('disk', 'libraryNotWritable', { folder: folder.root }, { cause });
}

/** Held for as long as a library is open. */
export type LibraryLock = { readonly release: () => void };

/**
 * Takes the library for this process alone. The lock is the operating system's own, held on an empty file through
 * SQLite: a killed process lets go of it, and no stale process number can keep the library shut.
 *
 * Throws `library-busy` when another process, or another backend of this one, has it.
 */
export function lockLibrary(folder: LibraryFolder): LibraryLock {
  beginForOwner(folder.lock);
  const holder = new Database(folder.lock, { timeout: 0 });
  try {
    // Keeps the transaction's journal out of the folder.
    holder.pragma('journal_mode = MEMORY');
    holder.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    holder.close();
    const isTaken = error instanceof Error && 'code' in error && /^SQLITE_(BUSY|LOCKED)/.test(String(error.code));
    if (!isTaken) throw error;
    throw new ProblemError('library-busy', 'libraryBusy', { folder: folder.root }, { cause: error });
  }
  return {
    release: () => {
      if (!holder.open) return;
      holder.exec('ROLLBACK');
      holder.close();
    },
  };
}
