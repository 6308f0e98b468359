import { Changes } from './changes.ts';
import { inTransaction, run, type Writing } from './connection.ts';
import { assertWritable } from './sessions.ts';

/** Whose action it is, and where. `sessionId` null = no session's: a trainee was added. */
export type ActContext = {
  readonly sessionId: string | null;
  readonly actorName: string;
  /** `once` = stays in the history and can't be taken back: the birth of a session. */
  readonly kind: 'undoable' | 'once';
};

/** What an action did: the name people read in the history, and what the caller wants back. */
export type ActOutcome<T> = { readonly name: string; readonly value: T };

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
    if (changes.list.length > 0) record(writing, context, outcome.name, changes);
    return outcome.value;
  });
}

/** Writes an action into the log that changed no journaled row: a letter was sent. Called within a transaction. */
export function recordAct(writing: Writing, context: ActContext, name: string): void {
  assertWritable(writing, context.sessionId);
  record(writing, context, name, new Changes(writing));
}

function record(writing: Writing, context: ActContext, name: string, changes: Changes): void {
  run(writing, "UPDATE act SET state = 'dropped' WHERE session_id = ? AND state = 'undone'", context.sessionId);
  const act = run(
    writing,
    "INSERT INTO act (session_id, name, at, who, undoable, state) VALUES (?, ?, ?, ?, ?, 'done')",
    context.sessionId,
    name,
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
