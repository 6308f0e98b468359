import type { ProblemId } from '../../../engine/wording/sayProblem.ts';
import { ProblemError } from '../../contract/reply.ts';
import { all, first, type Reading, run, runScript, type Writing } from './connection.ts';
import { digestMask } from './digestOfRow.ts';

/**
 * The tables whose rows have digests, and the column that names whom a row belongs to: a digest is kept for all rows of
 * one owner together. Owners are chosen so that what moves (a clip to another session) takes what it owns along untouched.
 */
export const rowOwners = {
  library: 'only_row',
  setting: 'name',
  trainee: 'id',
  session: 'id',
  entry: 'session_id',
  clip: 'entry_id',
  rep: 'clip_id',
  flag: 'clip_id',
  flag_rep: 'flag_id',
  tick: 'clip_id',
  drawing: 'clip_id',
  cover: 'clip_id',
  clip_set_up: 'clip_id',
  suggestion_answer: 'clip_id',
  letter_edit: 'session_id',
  letter_paragraph: 'session_id',
  letter_left_out: 'session_id',
  letter_order: 'session_id',
  name_decision: 'session_id',
  sent_letter: 'session_id',
  session_sent: 'session_id',
  session_summary: 'session_id',
  handover: 'session_id',
  handover_delivery: 'handover_id',
  footage: 'id',
  footage_frames: 'footage_id',
  recording: 'footage_id',
  narration: 'clip_id',
  arrival: 'id',
  act: 'session_id',
  act_also: 'session_id',
  act_change: 'act_id',
} as const satisfies Readonly<Record<string, string>>;

export type DigestedTable = keyof typeof rowOwners;

const isDigested = (name: string): name is DigestedTable => Object.hasOwn(rowOwners, name);

/** Rows that belong to nobody (a trainee was added) belong to ''. */
const ownerOf = (table: DigestedTable, row: string): string => `coalesce(CAST(${row}.${rowOwners[table]} AS TEXT), '')`;

function digestSql(reading: Reading, table: DigestedTable, row: string): string {
  const columns = all<{ name: string }>(reading, 'SELECT name FROM pragma_table_info(?) ORDER BY cid', table);
  return `digest_of_row('${table}', ${columns.map(({ name }) => `${row}.${name}`).join(', ')})`;
}

const tablesThere = (reading: Reading): DigestedTable[] =>
  all<{ name: string }>(reading, "SELECT name FROM sqlite_schema WHERE type = 'table'")
    .map(({ name }) => name)
    .filter(isDigested);

/** Whether the library is of a shape that keeps digests. */
export const keepsDigests = (reading: Reading): boolean =>
  first(reading, "SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'row_digest'") !== undefined;

/**
 * Has the connection keep the digests in step with every row it writes, whoever writes it: triggers of the connection's own,
 * so that they never stand in the way of a migration.
 */
export function followRows(writing: Writing): void {
  for (const table of tablesThere(writing)) {
    const [plus, minus] = [adding(writing, table, 'NEW', '+'), adding(writing, table, 'OLD', '-')];
    runScript(
      writing,
      `CREATE TEMP TRIGGER digest_${table}_insert AFTER INSERT ON main.${table} BEGIN ${plus} END;
       CREATE TEMP TRIGGER digest_${table}_delete AFTER DELETE ON main.${table} BEGIN ${minus} END;
       CREATE TEMP TRIGGER digest_${table}_update AFTER UPDATE ON main.${table} BEGIN ${minus} ${plus} END;`,
    );
  }
}

function adding(reading: Reading, table: DigestedTable, row: 'NEW' | 'OLD', sign: '+' | '-'): string {
  const there = `table_name = '${table}' AND owner = ${ownerOf(table, row)}`;
  const digest = digestSql(reading, table, row);
  return `INSERT INTO row_digest SELECT '${table}', ${ownerOf(table, row)}, 0
      WHERE NOT EXISTS (SELECT 1 FROM row_digest WHERE ${there});
    UPDATE row_digest SET digest = (digest ${sign} ${digest}) & ${digestMask} WHERE ${there};
    DELETE FROM row_digest WHERE ${there} AND digest = 0;`;
}

/** Rows of one owner that don't agree with their digest, and by how much. */
export type Differing = { readonly table: DigestedTable; readonly owner: string; readonly by: number };

/** All that doesn't agree with its digest; empty in a library that is as the app left it. */
export function listDiffering(reading: Reading, tables: readonly DigestedTable[] = tablesThere(reading)): Differing[] {
  return tables.flatMap((table) =>
    all<{ owner: string; by: number }>(
      reading,
      `SELECT owner, sum(part) & ${digestMask} AS "by" FROM (
         SELECT ${ownerOf(table, table)} AS owner, ${digestSql(reading, table, table)} AS part FROM ${table}
         UNION ALL SELECT owner, -digest FROM row_digest WHERE table_name = '${table}'
       ) GROUP BY owner HAVING "by" <> 0`,
    ).map((found) => ({ table, ...found })),
  );
}

const schemaDigest = `SELECT sum(digest_of_row(type, name, tbl_name, sql)) & ${digestMask} AS digest FROM sqlite_schema
  WHERE name NOT LIKE 'sqlite~_%' ESCAPE '~'`;

/** Whether the tables, indexes and triggers are those that the migrations made. */
export const isSchemaSound = (reading: Reading): boolean =>
  first<{ digest: number }>(reading, schemaDigest)?.digest ===
  first<{ digest: number }>(reading, "SELECT digest FROM row_digest WHERE table_name = 'sqlite_schema'")?.digest;

/** Makes all digests anew for tables of another shape. What differed before goes on differing: a damage is never made sound. */
export function makeDigestsAnew(writing: Writing, differing: readonly Differing[]): void {
  run(writing, 'DELETE FROM row_digest');
  run(writing, `INSERT INTO row_digest SELECT 'sqlite_schema', '', digest FROM (${schemaDigest})`);
  for (const table of tablesThere(writing)) {
    run(
      writing,
      `INSERT INTO row_digest SELECT '${table}', ${ownerOf(table, table)}, sum(${digestSql(writing, table, table)}) & ${digestMask}
       FROM ${table} GROUP BY 2`,
    );
  }
  for (const { table, owner, by } of differing) {
    run(writing, 'INSERT OR IGNORE INTO row_digest VALUES (?, ?, 0)', table, owner);
    run(
      writing,
      `UPDATE row_digest SET digest = (digest - ?) & ${digestMask} WHERE table_name = ? AND owner = ?`,
      by,
      table,
      owner,
    );
  }
}

/** Takes the rows of an owner for sound as they are: for rows that were just made anew out of others. */
export function takeForSound(writing: Writing, table: DigestedTable, owner: string): void {
  run(writing, 'DELETE FROM row_digest WHERE table_name = ? AND owner = ?', table, owner);
  run(
    writing,
    `INSERT INTO row_digest SELECT '${table}', ${ownerOf(table, table)}, sum(${digestSql(writing, table, table)}) & ${digestMask}
     FROM ${table} WHERE ${rowOwners[table]} = ? GROUP BY 2`,
    owner,
  );
}

const itself = 'SELECT id FROM asked';

/**
 * Whether the rows of an owner agree with their digest. `owners` gives several at once, as a query on `asked`, whose one row
 * has the given id.
 */
export function agreesWithDigest(reading: Reading, table: DigestedTable, id: string, owners = itself): boolean {
  const found = first<{ by: number }>(reading, agreementSql(reading, table, owners), id);
  return found?.by === 0;
}

/** By connection: a library of an older version has other columns. */
const agreements = new WeakMap<Reading, Map<string, string>>();

function agreementSql(reading: Reading, table: DigestedTable, owners: string): string {
  const key = `${table} ${owners}`;
  const ofConnection = agreements.get(reading) ?? new Map<string, string>();
  agreements.set(reading, ofConnection);
  const known = ofConnection.get(key);
  if (known !== undefined) return known;
  const sql = `WITH asked (id) AS (SELECT ?), owner_asked (id) AS (${owners})
    SELECT coalesce(sum(part) & ${digestMask}, 0) AS "by" FROM (
      SELECT ${digestSql(reading, table, table)} AS part FROM ${table}
        WHERE ${rowOwners[table]} IN (SELECT id FROM owner_asked)
      UNION ALL SELECT -digest FROM row_digest
        WHERE table_name = '${table}' AND owner IN (SELECT id FROM owner_asked))`;
  ofConnection.set(key, sql);
  return sql;
}

/** Throws `library-damaged` with a sentence unless the rows of an owner are as the app left them. */
export function assertSound(reading: Reading, table: DigestedTable, owner: string, otherwise: ProblemId): void {
  if (!agreesWithDigest(reading, table, owner)) throw new ProblemError('library-damaged', otherwise);
}

const itsEntries = 'SELECT entry.id FROM asked JOIN entry ON entry.session_id = asked.id';
const withClips = 'FROM asked JOIN entry ON entry.session_id = asked.id JOIN clip ON clip.entry_id = entry.id';
const itsClips = `SELECT clip.id ${withClips}`;

/** What a session is read from, and who owns it. */
const partsOfSession: readonly (readonly [table: DigestedTable, owners: string])[] = [
  ['session', itself],
  ['trainee', 'SELECT session.trainee_id FROM asked JOIN session ON session.id = asked.id'],
  ['entry', itself],
  ['clip', itsEntries],
  ['footage', `SELECT clip.footage_id ${withClips}`],
  ['rep', itsClips],
  ['flag', itsClips],
  ['flag_rep', `SELECT flag.id ${withClips} JOIN flag ON flag.clip_id = clip.id`],
  ['tick', itsClips],
  ['drawing', itsClips],
  ['cover', itsClips],
  ['clip_set_up', itsClips],
  ['suggestion_answer', itsClips],
  ['letter_edit', itself],
  ['letter_paragraph', itself],
  ['letter_left_out', itself],
  ['letter_order', itself],
  ['name_decision', itself],
];

/** Whether all that a session is read from is as the app left it. */
export const isSessionSound = (reading: Reading, sessionId: string): boolean =>
  partsOfSession.every(([table, owners]) => agreesWithDigest(reading, table, sessionId, owners));

const asClip = 'FROM asked JOIN clip ON clip.id = asked.id';
const sessionOfClip = `SELECT entry.session_id ${asClip} JOIN entry ON entry.id = clip.entry_id`;

/** What a clip is measured from, and who owns it. */
const partsOfClip: readonly (readonly [table: DigestedTable, owners: string])[] = [
  ['session', sessionOfClip],
  ['entry', sessionOfClip],
  ['clip', `SELECT clip.entry_id ${asClip}`],
  ['footage', `SELECT clip.footage_id ${asClip}`],
  ['rep', itself],
  ['clip_set_up', itself],
  ['suggestion_answer', itself],
];

/** Whether all that a clip is measured from, but its recording, is as the app left it. */
export const isClipSound = (reading: Reading, clipId: string): boolean =>
  partsOfClip.every(([table, owners]) => agreesWithDigest(reading, table, clipId, owners));
