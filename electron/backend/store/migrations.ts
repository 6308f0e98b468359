import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { gunzipSync } from 'node:zlib';
import * as v from 'valibot';
import { type Warning, type WarningId, warningSchema } from '../../../engine/recording/warnings.ts';
import { ProblemError } from '../../contract/reply.ts';
import {
  all,
  first,
  inTransaction,
  numberPragma,
  run,
  runScript,
  setNumberPragma,
  type Writing,
} from './connection.ts';
import { keepsDigests, listDiffering, makeDigestsAnew } from './rowDigests.ts';

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
  const differing = keepsDigests(connection) ? listDiffering(connection) : [];
  runScript(connection, migration.sql);
  afterwards[migration.name]?.(connection);
  if (keepsDigests(connection)) makeDigestsAnew(connection, differing);
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
  throw new ProblemError('library-newer', 'libraryUnknown');
}

/**
 * The sentences that a recording's warnings were stored as up to the sixth shape of the library, as they were written
 * then. They never change again: what is said today stands in `engine/wording`.
 */
const sentences: readonly { readonly id: WarningId; readonly sentence: RegExp }[] = [
  { id: 'cameraMoves', sentence: /^The camera moves and the background shows too little to take that out/ },
  { id: 'noDisc', sentence: /^No disc was found that moves with the lifter/ },
  { id: 'discLost', sentence: /^The disc can’t be seen in (?<lost>\d+) of (?<frames>\d+) frames/ },
  { id: 'discDoubtful', sentence: /^The disc’s place is doubtful in (?<doubtful>\d+) of (?<frames>\d+) frames/ },
  { id: 'noRimAtClick', sentence: /^No rim of a disc shows round the click at frame (?<frame>\d+)/ },
  { id: 'pointLost', sentence: /^The point can’t be told apart in (?<lost>\d+) of (?<frames>\d+) frames/ },
  { id: 'nobodySeen', sentence: /^Nobody could be seen in this clip/ },
  { id: 'seldomSeen', sentence: /^The lifter could be seen in (?<percent>\d+) % of the clip only/ },
];

const packedSchema = v.object({ warnings: v.optional(v.array(v.string()), []) });

/** Part of the migration to messages: takes each recording's warnings out of its packed data, as messages. */
export function unpackWarnings(connection: Writing): void {
  for (const { row } of all<{ row: number }>(connection, 'SELECT rowid AS row FROM recording')) {
    const packed = first<{ data: Uint8Array }>(connection, 'SELECT data FROM recording WHERE rowid = ?', row);
    if (packed === undefined) continue;
    const { warnings } = v.parse(packedSchema, JSON.parse(gunzipSync(packed.data).toString('utf8')));
    if (warnings.length === 0) continue;
    const messages = warnings.flatMap((sentence) => messageOf(sentence) ?? []);
    run(connection, 'UPDATE recording SET warnings = ? WHERE rowid = ?', JSON.stringify(messages), row);
  }
}

function messageOf(text: string): Warning | null {
  for (const { id, sentence } of sentences) {
    const found = sentence.exec(text);
    if (found === null) continue;
    const values = Object.entries(found.groups ?? {}).map(([name, digits]) => [name, Number(digits)]);
    return v.parse(warningSchema, { id, values: Object.fromEntries(values) });
  }
  return null;
}
