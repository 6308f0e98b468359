import type { Message } from '../../../engine/message/message.ts';
import type { ActionId } from '../../../engine/wording/sayAction.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { HistoryState } from '../../contract/shapes.ts';
import { keepCamerasInStep } from './cameras.ts';
import {
  asJournaledTable,
  type Change,
  Changes,
  type JournaledTable,
  type Row,
  readRow,
  removeRow,
  writeColumns,
  writeRow,
} from './changes.ts';
import { all, first, inTransaction, type Reading, run, type Writing } from './connection.ts';
import { rowInNewNames } from './oldNames.ts';
import { assertWritable } from './sessions.ts';
import { messageOfText, textOfMessage } from './storedMessage.ts';

/** Whose action it is, and where. `sessionId` null = no session's: a trainee was added. */
export type ActContext = {
  readonly sessionId: string | null;
  readonly actorName: string;
  /** `once` = stays in the history and can't be taken back: the birth of a session. */
  readonly kind: 'undoable' | 'once';
};

/** What an action is called in the history (said by `sayAction`). */
export type ActName = Message<ActionId>;

/** What an action did: its name, and what the caller wants back. */
export type ActOutcome<T> = { readonly name: ActName; readonly value: T };

const derivations = new WeakMap<Writing, (sessionId: string) => void>();

/** Names what is derived from a session: done at the end of each act, undo and redo, in their transaction. */
export function afterEachAct(writing: Writing, derive: (sessionId: string) => void): void {
  derivations.set(writing, derive);
}

/** Makes what is derived from a session anew; called within the transaction that changed it. */
export function deriveAnew(writing: Writing, sessionId: string | null): void {
  if (sessionId !== null) derivations.get(writing)?.(sessionId);
}

/**
 * Performs one action of a person: one transaction, one row of the change log with every row before and after.
 * An action that changes nothing leaves no trace and keeps what redo could bring back. Throws `conflict` for a session
 * that is only read.
 */
export function perform<T>(writing: Writing, context: ActContext, work: (changes: Changes) => ActOutcome<T>): T {
  return inTransaction(writing, () => {
    assertWritable(writing, context.sessionId);
    const changes = new Changes(writing);
    const outcome = work(changes);
    keepCamerasInStep(changes);
    if (changes.list.length > 0) record(writing, context, outcome.name, changes);
    return outcome.value;
  });
}

/** Writes an action into the log that changed no journaled row: a letter was sent. Called within a transaction. */
export function recordAct(writing: Writing, context: ActContext, name: ActName): void {
  assertWritable(writing, context.sessionId);
  record(writing, context, name, new Changes(writing));
}

function record(writing: Writing, context: ActContext, name: ActName, changes: Changes): void {
  run(writing, "UPDATE act SET state = 'dropped' WHERE session_id = ? AND state = 'undone'", context.sessionId);
  const act = run(
    writing,
    "INSERT INTO act (session_id, name, at, who, undoable, state) VALUES (?, ?, ?, ?, ?, 'done')",
    context.sessionId,
    textOfMessage(name),
    new Date().toISOString(),
    context.actorName,
    context.kind === 'undoable' ? 1 : 0,
  );
  changes.list.forEach((change, ordinal) => {
    run(
      writing,
      'INSERT INTO act_change (act_id, ordinal, table_name, row_key, before, after) VALUES (?, ?, ?, ?, ?, ?)',
      act.rowId,
      ordinal,
      change.table,
      JSON.stringify(change.key),
      change.before && JSON.stringify(change.before),
      change.after && JSON.stringify(change.after),
    );
  });
  deriveAnew(writing, context.sessionId);
}

type ActRow = { readonly id: number; readonly name: string };

/** One line of a session's history. */
export type HistoryLine = {
  readonly id: number;
  readonly name: Message;
  readonly at: string;
  readonly undone: boolean;
  /** Undone, and something else was done since: redo can't bring it back. */
  readonly dropped: boolean;
};

const nextUndo = `SELECT id, name FROM act WHERE session_id = ? AND state = 'done' AND undoable = 1
  ORDER BY id DESC LIMIT 1`;
const nextRedo = "SELECT id, name FROM act WHERE session_id = ? AND state = 'undone' ORDER BY id LIMIT 1";

/** What undo and redo would do next in a session. */
export function readHistoryState(reading: Reading, sessionId: string): HistoryState {
  return {
    undo: nameOf(first<ActRow>(reading, nextUndo, sessionId)),
    redo: nameOf(first<ActRow>(reading, nextRedo, sessionId)),
  };
}

const nameOf = (row: ActRow | undefined): Message | null => (row === undefined ? null : messageOfText(row.name));

/** A session's acts, newest first. */
export function listHistory(reading: Reading, sessionId: string): HistoryLine[] {
  const rows = all<ActRow & { at: string; state: string }>(
    reading,
    'SELECT id, name, at, state FROM act WHERE session_id = ? ORDER BY id DESC',
    sessionId,
  );
  return rows.map(({ id, name, at, state }) => ({
    id,
    name: messageOfText(name),
    at,
    undone: state !== 'done',
    dropped: state === 'dropped',
  }));
}

/** Takes the newest act of a session back. Throws `conflict` when there is none. */
export function undo(writing: Writing, sessionId: string): void {
  inTransaction(writing, () => {
    const act = first<ActRow>(writing, nextUndo, sessionId);
    if (!act) throw new ProblemError('conflict', 'nothingToUndo');
    for (const step of stepsOf(writing, act.id).reverse()) move(writing, step, step.after, step.before);
    run(writing, "UPDATE act SET state = 'undone' WHERE id = ?", act.id);
    deriveAnew(writing, sessionId);
  });
}

/** Does the act of a session that was taken back last again. Throws `conflict` when there is none. */
export function redo(writing: Writing, sessionId: string): void {
  inTransaction(writing, () => {
    const act = first<ActRow>(writing, nextRedo, sessionId);
    if (!act) throw new ProblemError('conflict', 'nothingToRedo');
    for (const step of stepsOf(writing, act.id)) move(writing, step, step.before, step.after);
    run(writing, "UPDATE act SET state = 'done' WHERE id = ?", act.id);
    deriveAnew(writing, sessionId);
  });
}

function stepsOf(reading: Reading, actId: number): Change[] {
  const rows = all<{ table_name: string; row_key: string; before: string | null; after: string | null }>(
    reading,
    'SELECT table_name, row_key, before, after FROM act_change WHERE act_id = ? ORDER BY ordinal',
    actId,
  );
  return rows.map((row) => {
    const table = asJournaledTable(row.table_name);
    if (!table) throw new Error(`Act ${actId} names the table "${row.table_name}", which has no history.`);
    return { table, key: JSON.parse(row.row_key), before: parsed(table, row.before), after: parsed(table, row.after) };
  });
}

function parsed(table: JournaledTable, json: string | null): Row | null {
  return json === null ? null : rowInNewNames(table, JSON.parse(json));
}

function move(writing: Writing, step: Change, from: Row | null, to: Row | null): void {
  const there = readRow(writing, step.table, step.key);
  if (!agree(there, from)) throw new Error(`A row of ${step.table} is not as the history left it.`);
  if (to === null) removeRow(writing, step.table, step.key);
  else if (there === null) writeRow(writing, step.table, to);
  else writeColumns(writing, step.table, step.key, to);
}

/** Columns that a later migration added are no part of what an older act remembers. */
function agree(there: Row | null, remembered: Row | null): boolean {
  if (there === null || remembered === null) return there === remembered;
  return Object.entries(remembered).every(([name, value]) => there[name] === value);
}
