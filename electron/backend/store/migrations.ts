import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { ProblemError } from '../../contract/reply.ts';
import { all, inTransaction, numberPragma, run, runScript, setNumberPragma, type Writing } from './connection.ts';
import { unpackWarnings } from './unpackWarnings.ts';

/** One step of the library's shape. */
export type Migration = {
  readonly version: number;
  readonly name: string;
  readonly sql: string;
  readonly sha256: string;
};

/** What a migration does that SQL can't, by its name: in its transaction, after its script. */
const afterwards: Readonly<Record<string, (connection: Writing) => void>> = { messages: unpackWarnings };

const fileName = /^(\d{4})-([a-z0-9-]+)\.sql$/;

/** The migrations in the app's folder, ascending from 1 without a gap. Throws when a file is misnamed or missing. */
export function readMigrations(appFolder: string): Migration[] {
  const folder = path.join(appFolder, 'migrations');
  return readdirSync(folder)
    .filter((name) => name.endsWith('.sql'))
    .sort()
    .map((file, index) => {
      const [, digits, name] = fileName.exec(file) ?? [];
      if (!name || Number(digits) !== index + 1) throw new Error(`Migration "${file}" is out of order or misnamed.`);
      // Line ends may differ between checkouts; the checksum must not.
      const sql = readFileSync(path.join(folder, file), 'utf8').replaceAll('\r\n', '\n');
      return { version: index + 1, name, sql, sha256: createHash('sha256').update(sql).digest('hex') };
    });
}

/**
 * Brings a library to the newest version, each step in a transaction of its own; calls `beforeFirst` before the
 * first change to a library that holds something.
 *
 * Throws `library-newer` when a step already taken is not the one this app knows.
 */
export function migrate(connection: Writing, migrations: readonly Migration[], beforeFirst: () => void): void {
  const version = numberPragma(connection, 'user_version');
  if (version > 0) checkApplied(connection, migrations, version);
  const open = migrations.filter((each) => each.version > version);
  if (open.length > 0 && version > 0) beforeFirst();
  for (const migration of open) inTransaction(connection, () => apply(connection, migration));
}

function apply(connection: Writing, migration: Migration): void {
  runScript(connection, migration.sql);
  afterwards[migration.name]?.(connection);
  const broken = all(connection, 'PRAGMA foreign_key_check');
  if (broken.length > 0) throw new Error(`Migration ${migration.version} would leave rows without their owners.`);
  run(
    connection,
    'INSERT INTO migration (version, name, sha256, applied_at) VALUES (?, ?, ?, ?)',
    migration.version,
    migration.name,
    migration.sha256,
    new Date().toISOString(),
  );
  setNumberPragma(connection, 'user_version', migration.version);
}

function checkApplied(connection: Writing, migrations: readonly Migration[], version: number): void {
  const taken = all<{ version: number; sha256: string }>(
    connection,
    'SELECT version, sha256 FROM migration ORDER BY version',
  );
  const known = taken.every((row) => migrations[row.version - 1]?.sha256 === row.sha256);
  if (taken.length === version && known) return;
  throw new ProblemError(
    'library-newer',
    'The library was made by a Rackside that this one does not know, so nothing was changed; open it with that one.',
  );
}
