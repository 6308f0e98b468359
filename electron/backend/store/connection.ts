import { type BigIntStats, statSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { ProblemError } from '../../contract/reply.ts';
import { digestOfRow } from './digestOfRow.ts';

declare const readable: unique symbol;
declare const writable: unique symbol;

/** A connection that can only read. Store functions take the connection first; a read path can't compile a write. */
export type Reading = { readonly [readable]: true };
/** The one connection that writes; it reads as well, and inside a transaction sees its own changes. */
export type Writing = Reading & { readonly [writable]: true };

/** What SQLite stores. */
export type Value = string | number | null | Uint8Array;

const databases = new WeakMap<Reading, Database.Database>();
const statements = new WeakMap<Reading, Map<string, Database.Statement<unknown[], unknown>>>();

/** Opens the file for reading; it must exist. Never changes the database file. */
export function openReading(file: string): Reading {
  const database = new Database(file, { readonly: true, fileMustExist: true });
  return keep(database, {} as Reading, ['busy_timeout = 5000', 'trusted_schema = OFF', 'cell_size_check = ON']);
}

/** Opens the file for writing, creating it if need be, with the settings under which nothing acknowledged is lost. */
export function openWriting(file: string): Writing {
  const database = new Database(file);
  const connection = keep(database, {} as Writing, [
    'journal_mode = WAL',
    // SQLite falls back to NORMAL on reopening a WAL file unless told: a power cut could then lose the last acts.
    'synchronous = FULL',
    'foreign_keys = ON',
    // Else a row that INSERT OR REPLACE takes away would go unnoticed by the digests.
    'recursive_triggers = ON',
    'busy_timeout = 5000',
    'trusted_schema = OFF',
    'cell_size_check = ON',
    'temp_store = MEMORY',
  ]);
  opened.set(connection, { file, found: statSync(file, { bigint: true }) });
  return connection;
}

/** Which file a writing connection has open, and what the disk said of it then. */
const opened = new WeakMap<Reading, { readonly file: string; readonly found: BigIntStats }>();

/**
 * Throws `disk` where the file that is open does not lie in its place any more: it was removed, moved or replaced, or its
 * disk went away. What is written into it then is written into nothing that could be opened again.
 */
function assertInPlace(connection: Writing): void {
  const known = opened.get(connection);
  if (known === undefined) return;
  const { file, found } = known;
  const now = statSync(file, { bigint: true, throwIfNoEntry: false });
  if (now?.ino === found.ino && now.dev === found.dev) return;
  throw new ProblemError('disk', 'libraryGone', { folder: path.dirname(file) });
}

function keep<C extends Reading>(database: Database.Database, connection: C, pragmas: readonly string[]): C {
  try {
    for (const pragma of pragmas) database.pragma(pragma);
    database.function('digest_of_row', { varargs: true, deterministic: true }, digestOfRow);
  } catch (error) {
    database.close();
    throw error;
  }
  databases.set(connection, database);
  statements.set(connection, new Map());
  return connection;
}

/** One query that was run, without the values it was run with. */
export type RanQuery = { readonly sql: string; readonly tookMs: number };

const observers = new WeakMap<Reading, (query: RanQuery) => void>();

/** Tells of every query that a connection runs from now on. */
export function observeQueries(connection: Reading, observe: (query: RanQuery) => void): void {
  observers.set(connection, observe);
}

function observed<T>(connection: Reading, sql: string, query: () => T): T {
  const observe = observers.get(connection);
  if (observe === undefined) return query();
  const startMs = performance.now();
  try {
    return query();
  } finally {
    observe({ sql, tookMs: performance.now() - startMs });
  }
}

/** Every row of a query. */
export function all<Row>(connection: Reading, sql: string, ...values: readonly Value[]): Row[] {
  return observed(connection, sql, () => prepared(connection, sql).all(...values)) as Row[];
}

/** The first row of a query, or undefined. */
export function first<Row>(connection: Reading, sql: string, ...values: readonly Value[]): Row | undefined {
  return observed(connection, sql, () => prepared(connection, sql).get(...values)) as Row | undefined;
}

/** Runs one statement; gives the number of rows it changed and the row id of an insert. */
export function run(
  connection: Writing,
  sql: string,
  ...values: readonly Value[]
): { readonly changes: number; readonly rowId: number } {
  // Within a transaction it is looked at once, before the end.
  if (!databaseOf(connection).inTransaction) assertInPlace(connection);
  const result = observed(connection, sql, () => prepared(connection, sql).run(...values));
  return { changes: result.changes, rowId: Number(result.lastInsertRowid) };
}

/** Runs a script of several statements, for migrations. */
export function runScript(connection: Writing, sql: string): void {
  databaseOf(connection).exec(sql);
}

/** One transaction that holds the write lock from its start: all of the work, or none of it. */
export function inTransaction<T>(connection: Writing, work: () => T): T {
  const database = databaseOf(connection);
  const isInside = database.inTransaction;
  return database
    .transaction(() => {
      const value = work();
      if (!isInside) assertInPlace(connection);
      return value;
    })
    .immediate();
}

/** One state of the library for all that is read within, whatever others write meanwhile. */
export function inSnapshot<T>(connection: Reading, read: () => T): T {
  return databaseOf(connection).transaction(read).deferred();
}

/** Reads a setting of the file that is one number. */
export function numberPragma(connection: Reading, name: 'application_id' | 'user_version'): number {
  return Number(databaseOf(connection).pragma(name, { simple: true }));
}

/** Sets a number in the file's header; part of the surrounding transaction. */
export function setNumberPragma(connection: Writing, name: 'application_id' | 'user_version', value: number): void {
  databaseOf(connection).pragma(`${name} = ${Math.trunc(value)}`);
}

/**
 * Folds the log back into the file, so that a closed library is one file, then closes. Where the disk refuses that, the log stays
 * beside the file and is read when the library is next opened.
 */
export function closeWriting(connection: Writing): void {
  const database = databaseOf(connection);
  try {
    database.pragma('optimize');
    database.pragma('wal_checkpoint(TRUNCATE)');
  } catch (error) {
    if (!(error instanceof Database.SqliteError)) throw error;
  } finally {
    database.close();
  }
}

/** Closes a writing connection that could not be made ready, and folds nothing back. */
export function abandon(connection: Writing): void {
  databaseOf(connection).close();
}

/** Closes a reading connection. */
export function closeReading(connection: Reading): void {
  databaseOf(connection).close();
}

function databaseOf(connection: Reading): Database.Database {
  const database = databases.get(connection);
  if (!database) throw new Error('This connection was never opened.');
  return database;
}

function prepared(connection: Reading, sql: string): Database.Statement<unknown[], unknown> {
  const known = statements.get(connection)?.get(sql);
  if (known) return known;
  const fresh = databaseOf(connection).prepare<unknown[], unknown>(sql);
  statements.get(connection)?.set(sql, fresh);
  return fresh;
}
