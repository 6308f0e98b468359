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
import { assertWithinLimits } from './limits.ts';
import { rowInNewNames } from './oldNames.ts';
import { assertSound } from './rowDigests.ts';
import { assertWritable } from './sessions.ts';
import { messageOfText, textOfMessage } from './storedMessage.ts';

/** Whose action it is, and where. `sessionId` null = no session's: a trainee was added. */
export type ActContext = {
  readonly sessionId: string | null;
  readonly actorName: string;
  /** `once` = stays in the history and can't be taken back: the birth of a session. */
  readonly kind: 'undoable' | 'once';
  /** The other sessions that it changes: a clip goes from one to another. It stands in the history of each. */
  readonly alsoIn?: readonly string[];
  /**
   * Done with sessions as wholes, whose judgement stays as it is: the desk's undo takes it back, and a session that is only
   * read may be removed too.
   */
  readonly atDesk?: boolean;
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
    if (context.atDesk !== true) for (const id of sessionsOf(context)) assertWritable(writing, id);
    const changes = new Changes(writing);
    const outcome = work(changes);
    keepCamerasInStep(changes);
    assertWithinLimits(changes);
    if (changes.list.length > 0) record(writing, context, outcome.name, changes);
    return outcome.value;
  });
}

/** Writes an action into the log that changed no journaled row: a letter was sent. Called within a transaction. */
export function recordAct(writing: Writing, context: ActContext, name: ActName): void {
  assertWritable(writing, context.sessionId);
  record(writing, context, name, new Changes(writing));
}

const sessionsOf = ({ sessionId, alsoIn = [] }: ActContext): readonly string[] => [
  ...new Set(sessionId === null ? alsoIn : [sessionId, ...alsoIn]),
];

function record(writing: Writing, context: ActContext, name: ActName, changes: Changes): void {
  const sessionIds = sessionsOf(context);
  for (const id of sessionIds) dropUndone(writing, id, 0);
  const act = run(
    writing,
    "INSERT INTO act (session_id, name, at, who, undoable, state, at_desk) VALUES (?, ?, ?, ?, ?, 'done', ?)",
    context.sessionId,
    textOfMessage(name),
    new Date().toISOString(),
    context.actorName,
    context.kind === 'undoable' ? 1 : 0,
    context.atDesk === true ? 1 : 0,
  );
  for (const id of sessionIds) {
    if (id !== context.sessionId) {
      run(writing, 'INSERT INTO act_also (session_id, act_id) VALUES (?, ?)', id, act.rowId);
    }
  }
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
  for (const id of sessionIds) deriveAnew(writing, id);
}

/**
 * Drops what was undone in a session from an act on, so that redo can't bring it back. An act of several sessions that is
 * dropped takes with it what each of them did after it.
 */
export function dropUndone(writing: Writing, sessionId: string, fromActId: number): void {
  const undone = all<{ id: number }>(
    writing,
    `SELECT id FROM act WHERE state = 'undone' AND id >= ? AND ${inHistoryOf}`,
    fromActId,
    sessionId,
    sessionId,
  );
  for (const { id } of undone) run(writing, "UPDATE act SET state = 'dropped' WHERE id = ?", id);
  for (const { id } of undone) {
    for (const other of sessionsOfAct(writing, id)) if (other !== sessionId) dropUndone(writing, other, id);
  }
}

/**
 * Makes a session's history up to an act (all of it without one) one that can't be taken back: rows that it touched are
 * gone for good. Acts of several sessions take what came before them in the others with them.
 */
export function sealHistory(writing: Writing, sessionId: string, upTo = Number.MAX_SAFE_INTEGER): void {
  dropUndone(writing, sessionId, 0);
  const acts = all<{ id: number }>(
    writing,
    `SELECT id FROM act WHERE undoable = 1 AND id <= ? AND ${inHistoryOf}`,
    upTo,
    sessionId,
    sessionId,
  );
  for (const { id } of acts) run(writing, 'UPDATE act SET undoable = 0 WHERE id = ?', id);
  for (const { id } of acts) {
    for (const other of sessionsOfAct(writing, id)) if (other !== sessionId) sealHistory(writing, other, id);
  }
}

/** Acts that stand in the history of a session, which is named twice. */
const inHistoryOf = '(session_id = ? OR id IN (SELECT act_id FROM act_also WHERE session_id = ?))';

/** The sessions in whose histories an act stands. */
export function sessionsOfAct(reading: Reading, actId: number): string[] {
  const rows = all<{ id: string }>(
    reading,
    `SELECT session_id AS id FROM act WHERE id = ? AND session_id IS NOT NULL
     UNION SELECT session_id FROM act_also WHERE act_id = ?`,
    actId,
    actId,
  );
  return rows.map(({ id }) => id);
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

const next = {
  undo: `SELECT id, name FROM act WHERE state = 'done' AND undoable = 1 AND ${inHistoryOf} ORDER BY id DESC LIMIT 1`,
  redo: `SELECT id, name FROM act WHERE state = 'undone' AND ${inHistoryOf} ORDER BY id LIMIT 1`,
};

const nextOf = (reading: Reading, direction: keyof typeof next, sessionId: string): ActRow | undefined =>
  first<ActRow>(reading, next[direction], sessionId, sessionId);

function assertHistorySound(reading: Reading, sessionId: string): void {
  assertSound(reading, 'act', sessionId, 'historyDamaged');
  assertSound(reading, 'act_also', sessionId, 'historyDamaged');
}

/** What undo and redo would do next in a session. Throws `library-damaged` when its history changed on the disk by itself. */
export function readHistoryState(reading: Reading, sessionId: string): HistoryState {
  assertHistorySound(reading, sessionId);
  return {
    undo: nameOf(nextOf(reading, 'undo', sessionId)),
    redo: nameOf(nextOf(reading, 'redo', sessionId)),
  };
}

const nameOf = (row: ActRow | undefined): Message | null => (row === undefined ? null : messageOfText(row.name));

/** A session's acts, newest first. */
export function listHistory(reading: Reading, sessionId: string): HistoryLine[] {
  assertHistorySound(reading, sessionId);
  const rows = all<ActRow & { at: string; state: string }>(
    reading,
    `SELECT id, name, at, state FROM act WHERE ${inHistoryOf} ORDER BY id DESC`,
    sessionId,
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

/**
 * Takes the newest act of a session back; gives the sessions that it had changed. Throws `conflict` when there is none, or
 * when another session that it changed has changed since.
 */
export const undo = (writing: Writing, sessionId: string): string[] => step(writing, 'undo', sessionId);

/** Does the act of a session that was taken back last again, as `undo` took it back. */
export const redo = (writing: Writing, sessionId: string): string[] => step(writing, 'redo', sessionId);

function step(writing: Writing, direction: keyof typeof next, sessionId: string): string[] {
  return inTransaction(writing, () => {
    assertHistorySound(writing, sessionId);
    const act = nextOf(writing, direction, sessionId);
    if (!act) throw new ProblemError('conflict', direction === 'undo' ? 'nothingToUndo' : 'nothingToRedo');
    const sessionIds = sessionsOfAct(writing, act.id);
    const behind = sessionIds.find((id) => nextOf(writing, direction, id)?.id !== act.id);
    if (behind !== undefined) throw otherSessionChanged(writing, behind);
    assertSound(writing, 'act_change', String(act.id), 'historyDamaged');
    const steps = stepsOf(writing, act.id);
    if (direction === 'undo') for (const one of steps.reverse()) move(writing, one, one.after, one.before);
    else for (const one of steps) move(writing, one, one.before, one.after);
    run(writing, 'UPDATE act SET state = ? WHERE id = ?', direction === 'undo' ? 'undone' : 'done', act.id);
    for (const id of sessionIds) deriveAnew(writing, id);
    return sessionIds;
  });
}

function otherSessionChanged(reading: Reading, sessionId: string): ProblemError {
  const session = first<{ title: string; date: string }>(
    reading,
    'SELECT title, date FROM session WHERE id = ?',
    sessionId,
  );
  const { title = '', date = '' } = session ?? {};
  return new ProblemError('conflict', 'otherSessionChanged', { title, date });
}

/**
 * Takes the newest act back that was done at the desk, as `undo` does; gives its name too. Throws `conflict` where there is
 * none, or where something else was done in its session since.
 */
export function undoAtDesk(writing: Writing): { readonly sessionIds: readonly string[]; readonly name: Message } {
  return inTransaction(writing, () => {
    const act = first<ActRow & { session_id: string }>(
      writing,
      `SELECT id, name, session_id FROM act INDEXED BY act_desk
       WHERE at_desk = 1 AND state = 'done' AND undoable = 1 AND id > 0 ORDER BY id DESC LIMIT 1`,
    );
    if (act === undefined) throw new ProblemError('conflict', 'nothingToUndoAtDesk');
    if (nextOf(writing, 'undo', act.session_id)?.id !== act.id) throw otherSessionChanged(writing, act.session_id);
    return { sessionIds: undo(writing, act.session_id), name: messageOfText(act.name) };
  });
}

/**
 * Does the act again that the desk's undo took back last, unless something was done at the desk since; gives the sessions that it
 * changed, and its name.
 */
export function redoAtDesk(writing: Writing): { readonly sessionIds: readonly string[]; readonly name: Message } {
  return inTransaction(writing, () => {
    const act = first<ActRow & { session_id: string }>(
      writing,
      `SELECT id, name, session_id FROM act INDEXED BY act_desk_undone
       WHERE at_desk = 1 AND state = 'undone' AND undoable = 1
         AND id > coalesce((SELECT max(id) FROM act INDEXED BY act_desk
           WHERE at_desk = 1 AND state = 'done' AND undoable = 1), 0)
       ORDER BY id LIMIT 1`,
    );
    if (act === undefined) throw new ProblemError('conflict', 'nothingToRedoAtDesk');
    if (nextOf(writing, 'redo', act.session_id)?.id !== act.id) throw otherSessionChanged(writing, act.session_id);
    return { sessionIds: redo(writing, act.session_id), name: messageOfText(act.name) };
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
