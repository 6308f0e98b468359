import { sealHistory, sessionsOfAct } from './acts.ts';
import type { Binned } from './bin.ts';
import { asJournaledTable, type JournaledTable, journaledTables, type Row } from './changes.ts';
import { all, first, type Reading, run, type Writing } from './connection.ts';

/** A row that is gone for good, as the change log names it. */
type Gone = { readonly table: JournaledTable; readonly key: string };

type Pointing = { readonly table: string; readonly column: string; readonly at: string; readonly whenGone: string };

/** The tables whose rows point at a table's rows and would keep them from going. */
function tablesPointingAt(reading: Reading, table: string): Pointing[] {
  return all<Pointing>(
    reading,
    `SELECT owner.name AS "table", link."from" AS "column", coalesce(link."to", 'id') AS at, link.on_delete AS whenGone
     FROM sqlite_schema AS owner, pragma_foreign_key_list(owner.name) AS link
     WHERE owner.type = 'table' AND link."table" = ?`,
    table,
  ).filter(({ whenGone }) => whenGone !== 'CASCADE' && whenGone !== 'SET NULL');
}

/** What goes with a row: what to delete, in order, and which rows the change log may name. */
type Going = { readonly steps: readonly Step[]; readonly gone: readonly Gone[] };
type Step = { readonly table: string; readonly column: string; readonly value: string };

/** Rows, and before them every row that points at them, whatever table it is in. */
function goingWith(reading: Reading, step: Step): Going {
  const { table, column, value } = step;
  const rows = all<Row>(reading, `SELECT * FROM ${table} WHERE ${column} = ?`, value);
  const inner = tablesPointingAt(reading, table).flatMap((pointing) =>
    rows.map((row) =>
      goingWith(reading, { table: pointing.table, column: pointing.column, value: String(row[pointing.at]) }),
    ),
  );
  const journaled = asJournaledTable(table);
  const own = journaled === undefined ? [] : rows.map((row) => ({ table: journaled, key: keyOf(journaled, row) }));
  return {
    steps: [...inner.flatMap(({ steps }) => steps), ...(rows.length === 0 ? [] : [step])],
    gone: [...inner.flatMap(({ gone }) => gone), ...own],
  };
}

const keyOf = (table: JournaledTable, row: Row): string =>
  JSON.stringify(Object.fromEntries(journaledTables[table].map((name) => [name, row[name] ?? null])));

/**
 * Deletes a row with everything that hangs on it; called within a transaction. It can't be undone: acts that touched one of
 * the rows, and those before them in the same histories, can't be taken back from then on, and what they held is forgotten.
 */
export function deleteForGood(writing: Writing, table: Binned, id: string): void {
  const { steps, gone } = goingWith(writing, { table, column: 'id', value: id });
  forgetInHistory(writing, gone);
  for (const one of steps) run(writing, `DELETE FROM ${one.table} WHERE ${one.column} = ?`, one.value);
}

function forgetInHistory(writing: Writing, gone: readonly Gone[]): void {
  const names = new Set(gone.map(({ table, key }) => `${table} ${key}`));
  const changes = all<{ act_id: number; table_name: string; row_key: string }>(
    writing,
    'SELECT act_id, table_name, row_key FROM act_change',
  );
  const touching = new Set(
    changes.filter((change) => names.has(`${change.table_name} ${change.row_key}`)).map(({ act_id }) => act_id),
  );
  for (const actId of touching) {
    for (const sessionId of sessionsOfAct(writing, actId)) sealHistory(writing, sessionId, actId);
    // Which rows it changed stays: whether a session changed since it was sent is told by that.
    run(
      writing,
      `UPDATE act_change SET before = CASE WHEN before IS NOT NULL THEN '{}' END,
         after = CASE WHEN after IS NOT NULL THEN '{}' END WHERE act_id = ?`,
      actId,
    );
  }
}

/** Whether footage is shown by nothing any more, and no act that can be taken back would show it again. */
export function isFootageFree(reading: Reading, footageId: string): boolean {
  const isPointedAt = tablesPointingAt(reading, 'footage').some(
    ({ table, column }) => first(reading, `SELECT 1 FROM ${table} WHERE ${column} = ?`, footageId) !== undefined,
  );
  if (isPointedAt) return false;
  const inInbox = 'SELECT 1 FROM arrival WHERE footage_id = ? AND placed = 0';
  if (first(reading, inInbox, footageId) !== undefined) return false;
  const remembered = first(
    reading,
    `SELECT 1 FROM act_change JOIN act ON act.id = act_change.act_id
     WHERE act_change.table_name = 'clip' AND act.undoable = 1 AND act.state <> 'dropped'
       AND (json_extract(act_change.before, '$.footage_id') = ? OR json_extract(act_change.after, '$.footage_id') = ?)`,
    footageId,
    footageId,
  );
  return remembered === undefined;
}
