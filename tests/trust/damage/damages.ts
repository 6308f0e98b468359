import { readFileSync, writeFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { rowOwners } from '../../../electron/backend/store/rowDigests.ts';
import type { Random } from '../harness/random.ts';

/** A library's database that was left by a killed process: the file, and its log of what isn't in the file yet. */
export type LeftOpen = {
  readonly database: Buffer;
  readonly log: Buffer;
  /** The log as it was after each of its acts. */
  readonly logs: readonly Buffer[];
  readonly older: Buffer;
};

/** Something that disks, other programs and people do to a database. Gives what was done. */
export type Damage = {
  readonly name: string;
  readonly to: (file: string, random: Random, left: LeftOpen) => string;
};

const pageBytes = 4096;

/** Changes the file's bytes; `change` gives what it did. */
const onBytes =
  (
    change: (bytes: Buffer, random: Random) => string | { readonly did: string; readonly bytes: Buffer },
  ): Damage['to'] =>
  (file, random) => {
    const bytes = readFileSync(file);
    const result = change(bytes, random);
    writeFileSync(file, typeof result === 'string' ? bytes : result.bytes);
    return typeof result === 'string' ? result : result.did;
  };

const randomPage = (bytes: Buffer, random: Random): number => random.below(bytes.length / pageBytes);
const pageOf = (bytes: Buffer, page: number): Buffer => bytes.subarray(page * pageBytes, (page + 1) * pageBytes);

/** Changes rows with another program, which knows nothing of digests. */
const byHand =
  (change: (database: Database.Database, random: Random) => string): Damage['to'] =>
  (file, random) => {
    const database = new Database(file);
    try {
      database.pragma('foreign_keys = OFF');
      database.unsafeMode(true);
      return change(database, random);
    } finally {
      database.close();
    }
  };

function randomTable(database: Database.Database, random: Random): string {
  const filled = Object.keys(rowOwners).filter(
    (table) => database.prepare(`SELECT 1 FROM ${table}`).get() !== undefined,
  );
  return random.oneOf(filled);
}

/** Another value of the same kind, so that it goes into the same column. */
function otherValue(value: unknown, random: Random): unknown {
  if (typeof value === 'number') return value + random.oneOf([1, -1, 7]);
  if (typeof value === 'string') {
    const at = random.below(value.length + 1);
    return `${value.slice(0, at)}${random.oneOf(['x', '7', ' '])}${value.slice(at + 1)}`;
  }
  return value === null ? 'x' : Buffer.from('other');
}

function changeACell(database: Database.Database, random: Random): string {
  for (let attempt = 0; ; attempt += 1) {
    const table = randomTable(database, random);
    const columns = database.prepare('SELECT name FROM pragma_table_info(?)').pluck().all(table) as string[];
    const column = random.oneOf(columns);
    const rows = database.prepare(`SELECT ${column} AS value FROM ${table}`).all() as { value: unknown }[];
    const row = random.below(rows.length);
    const value = otherValue(rows[row]?.value, random);
    try {
      const { changes } = database
        .prepare(
          `UPDATE ${table} SET ${column} = ? WHERE (${column}) IS ? AND rowid = (SELECT rowid FROM ${table} LIMIT 1 OFFSET ?)`,
        )
        .run(value, rows[row]?.value, row);
      if (changes > 0) return `${table}.${column}, row ${row}: ${JSON.stringify(value)}`;
    } catch {
      // The table's own rules refuse it, or it has no row number: another cell then.
    }
    if (attempt > 200) return 'nothing could be changed';
  }
}

function removeARow(database: Database.Database, random: Random): string {
  for (;;) {
    const table = randomTable(database, random);
    try {
      database.exec(`DELETE FROM ${table} WHERE rowid = (SELECT rowid FROM ${table} ORDER BY random() LIMIT 1)`);
      return `a row of ${table}`;
    } catch {
      // It has no row number, or may not be removed.
    }
  }
}

export const damages: readonly Damage[] = [
  {
    name: 'a bit flipped',
    to: onBytes((bytes, random) => {
      const at = random.below(bytes.length);
      bytes.writeUInt8(bytes.readUInt8(at) ^ (1 << random.below(8)), at);
      return `byte ${at}`;
    }),
  },
  {
    name: 'bytes overwritten',
    to: onBytes((bytes, random) => {
      const at = random.below(bytes.length - 64);
      const length = 1 + random.below(64);
      for (let each = at; each < at + length; each += 1) bytes.writeUInt8(random.below(256), each);
      return `${length} bytes from ${at}`;
    }),
  },
  {
    name: 'a page of zeros',
    to: onBytes((bytes, random) => {
      const page = randomPage(bytes, random);
      pageOf(bytes, page).fill(0);
      return `page ${page}`;
    }),
  },
  {
    name: 'a sector of noise',
    to: onBytes((bytes, random) => {
      const sector = random.below(bytes.length / 512);
      for (let each = 0; each < 512; each += 1) bytes.writeUInt8(random.below(256), sector * 512 + each);
      return `sector ${sector}`;
    }),
  },
  {
    name: 'cut short',
    to: onBytes((bytes, random) => {
      const length = random.below(2) === 0 ? random.below(bytes.length) : randomPage(bytes, random) * pageBytes;
      return { did: `${length} of ${bytes.length} bytes`, bytes: bytes.subarray(0, length) };
    }),
  },
  {
    name: 'pages swapped',
    to: onBytes((bytes, random) => {
      const [one, other] = [randomPage(bytes, random), randomPage(bytes, random)];
      const kept = Buffer.from(pageOf(bytes, one));
      pageOf(bytes, other).copy(pageOf(bytes, one));
      kept.copy(pageOf(bytes, other));
      return `pages ${one} and ${other}`;
    }),
  },
  {
    name: 'a page written in another’s place',
    to: onBytes((bytes, random) => {
      const [one, other] = [randomPage(bytes, random), randomPage(bytes, random)];
      pageOf(bytes, one).copy(pageOf(bytes, other));
      return `page ${one} over ${other}`;
    }),
  },
  {
    name: 'a page of an older copy',
    to: (file, random, { older }) => {
      const bytes = readFileSync(file);
      const page = randomPage(older, random);
      if (page * pageBytes < bytes.length) pageOf(older, page).copy(pageOf(bytes, page));
      writeFileSync(file, bytes);
      return `page ${page}`;
    },
  },
  {
    name: 'a field of the header',
    to: onBytes((bytes, random) => {
      const at = random.below(100);
      bytes.writeUInt8(random.below(256), at);
      return `byte ${at}`;
    }),
  },
  { name: 'a value changed by hand', to: byHand(changeACell) },
  { name: 'a row removed by hand', to: byHand(removeARow) },
  {
    name: 'the schema changed by hand',
    to: byHand((database, random) => {
      const names = database
        .prepare("SELECT name FROM sqlite_schema WHERE type = ? AND name NOT LIKE 'sqlite_%'")
        .pluck();
      const kind = random.oneOf(['index', 'trigger', 'column', 'table', 'version'] as const);
      if (kind === 'version') {
        const version = random.below(60);
        database.pragma(`user_version = ${version}`);
        return `version ${version}`;
      }
      const table = random.oneOf(names.all('table') as string[]);
      if (kind === 'column') database.exec(`ALTER TABLE ${table} ADD COLUMN further TEXT`);
      else if (kind === 'table') database.exec(`DROP TABLE ${table}`);
      else database.exec(`DROP ${kind} ${random.oneOf(names.all(kind) as string[])}`);
      return `${kind} (${table})`;
    }),
  },
  {
    name: 'the log of an older copy beside it',
    to: (file, _, { log }) => {
      writeFileSync(`${file}-wal`, log);
      return `${log.length} bytes`;
    },
  },
  {
    name: 'a damaged log',
    to: (file, random, { database, log }) => {
      const bytes = Buffer.from(log);
      const at = random.below(bytes.length);
      bytes.writeUInt8(bytes.readUInt8(at) ^ (1 << random.below(8)), at);
      writeFileSync(file, database);
      writeFileSync(`${file}-wal`, random.below(2) === 0 ? bytes : bytes.subarray(0, at));
      return `from byte ${at}`;
    },
  },
  {
    name: 'the log gone',
    to: (file, _, { database }) => {
      writeFileSync(file, database);
      return 'after a kill';
    },
  },
  {
    name: 'noise for the index of the log',
    to: (file, random, { database, log }) => {
      const noise = Buffer.alloc(32_768);
      for (let each = 0; each < noise.length; each += 1) noise.writeUInt8(random.below(256), each);
      writeFileSync(file, database);
      writeFileSync(`${file}-wal`, log);
      writeFileSync(`${file}-shm`, noise);
      return '32 KB';
    },
  },
];
