import { all, first, type Reading, run, type Writing } from './connection.ts';

/** One row before and after: null = it was not there. */
export type Change = {
  readonly table: JournaledTable;
  readonly key: Row;
  readonly before: Row | null;
  readonly after: Row | null;
};

/** The only way to change a journaled table: writes rows and remembers them. Lives as long as one act. */
export class Changes {
  readonly list: Change[] = [];
  /** For looking things up; sees what this act has done so far. */
  readonly reading: Reading;
  readonly #writing: Writing;

  constructor(writing: Writing) {
    this.reading = writing;
    this.#writing = writing;
  }

  /** Adds a row. */
  insert(table: JournaledTable, row: Row): void {
    const key = keyOf(table, row);
    writeRow(this.#writing, table, row);
    this.list.push({ table, key, before: null, after: readRow(this.reading, table, key) });
  }

  /** Changes some columns of a row that must exist; a change to what is there already counts for nothing. */
  update(table: JournaledTable, key: Row, columns: Row): void {
    const before = readRow(this.reading, table, key);
    if (!before) throw new Error(`There is no row of ${table} to change.`);
    const differing = Object.entries(columns).filter(([name, value]) => before[name] !== value);
    if (differing.length === 0) return;
    writeColumns(this.#writing, table, key, Object.fromEntries(differing));
    this.list.push({ table, key, before, after: readRow(this.reading, table, key) });
  }

  /** Removes a row that must exist. */
  remove(table: JournaledTable, key: Row): void {
    const before = readRow(this.reading, table, key);
    if (!before) throw new Error(`There is no row of ${table} to remove.`);
    removeRow(this.#writing, table, key);
    this.list.push({ table, key, before, after: null });
  }

  /** Removes every row whose column has a value; gives the rows. */
  removeWhere(table: JournaledTable, column: string, value: string): Row[] {
    const rows = all<Row>(this.reading, `SELECT * FROM ${table} WHERE ${safeName(column)} = ?`, value);
    for (const row of rows) this.remove(table, keyOf(table, row));
    return rows;
  }
}

/** The row with a key, or null. */
export function readRow(connection: Reading, table: JournaledTable, key: Row): Row | null {
  const { sql, values } = where(table, key);
  return first<Row>(connection, `SELECT * FROM ${table} WHERE ${sql}`, ...values) ?? null;
}

/** Adds a row, outside any record of it: for acts and for taking them back. */
export function writeRow(connection: Writing, table: JournaledTable, row: Row): void {
  const names = Object.keys(row).map(safeName);
  const marks = names.map(() => '?').join(', ');
  run(connection, `INSERT INTO ${table} (${names.join(', ')}) VALUES (${marks})`, ...Object.values(row));
}

/** Sets columns of the row with a key. */
export function writeColumns(connection: Writing, table: JournaledTable, key: Row, columns: Row): void {
  const sets = Object.keys(columns).map((name) => `${safeName(name)} = ?`);
  const { sql, values } = where(table, key);
  run(connection, `UPDATE ${table} SET ${sets.join(', ')} WHERE ${sql}`, ...Object.values(columns), ...values);
}

/** Removes the row with a key. */
export function removeRow(connection: Writing, table: JournaledTable, key: Row): void {
  const { sql, values } = where(table, key);
  run(connection, `DELETE FROM ${table} WHERE ${sql}`, ...values);
}

function keyOf(table: JournaledTable, row: Row): Row {
  return Object.fromEntries(journaledTables[table].map((name) => [name, row[name] ?? null]));
}

function where(table: JournaledTable, key: Row) {
  const names: readonly string[] = journaledTables[table];
  return { sql: names.map((name) => `${name} = ?`).join(' AND '), values: names.map((name) => key[name] ?? null) };
}

/** Column names can come back out of a stored act: a damaged one must not become SQL. */
function safeName(name: string): string {
  if (!/^[a-z][a-z_]*$/.test(name)) throw new Error(`"${name}" is not a column.`);
  return name;
}

/** The tables that change only through acts, with the columns that name a row. */
export const journaledTables = {
  session: ['id'],
  entry: ['id'],
  clip: ['id'],
  rep: ['id'],
  flag: ['id'],
  flag_rep: ['flag_id', 'rep_id'],
  tick: ['id'],
  drawing: ['id'],
  cover: ['id'],
  clip_set_up: ['clip_id'],
  suggestion_answer: ['clip_id', 'suggestion_id'],
  trainee: ['id'],
  name_decision: ['id'],
  letter_edit: ['id'],
  letter_paragraph: ['id'],
  letter_left_out: ['id'],
  letter_order: ['session_id'],
} as const;

export type JournaledTable = keyof typeof journaledTables;

/** A row as SQLite gives it, without blobs: it has to survive JSON. */
export type Row = Readonly<Record<string, string | number | null>>;

/** The name, if a table of that name is journaled; undefined otherwise. */
export function asJournaledTable(name: string): JournaledTable | undefined {
  return Object.hasOwn(journaledTables, name) ? (name as JournaledTable) : undefined;
}
