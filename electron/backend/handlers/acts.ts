import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import { type ActOutcome, listHistory, perform, redo, undo } from '../store/acts.ts';
import type { Changes } from '../store/changes.ts';
import { assertWritable, findSession, findSessionAnywhere } from '../store/sessions.ts';
import type { Handler } from './handler.ts';

/** Performs an act of a person on a session, tells the screens after the commit, and gives what the act gave. */
export function actOnSession<T extends object>(
  context: Context,
  sessionId: string,
  work: (changes: Changes) => ActOutcome<T>,
): T {
  const library = context.library();
  const value = perform(library.writing, { sessionId, actorName: actorName(library), kind: 'undoable' }, work);
  tellChanged(context, sessionId);
  return value;
}

/**
 * The same on several sessions at once: what moves from one to another stands in the history of each, and is undone in all
 * of them or in none. `atDesk`: see `ActContext`; `writable` refuses it all the same in sessions that are only read.
 */
export function actOnSessions<T extends object>(
  context: Context,
  sessionIds: readonly string[],
  { atDesk = false, writable = !atDesk }: { readonly atDesk?: boolean; readonly writable?: boolean },
  work: (changes: Changes) => ActOutcome<T>,
): T {
  const library = context.library();
  const [sessionId = null, ...alsoIn] = new Set(sessionIds);
  if (writable) for (const id of sessionIds) assertWritable(library.reading, id);
  const about = { sessionId, alsoIn, atDesk, actorName: actorName(library), kind: 'undoable' } as const;
  const value = perform(library.writing, about, work);
  for (const id of new Set(sessionIds)) tellChanged(context, id);
  return value;
}

export const undoAct: Handler<'history.undo'> = (context, { sessionId }) => {
  const { reading, writing } = context.library();
  findSessionAnywhere(reading, sessionId);
  for (const id of undo(writing, sessionId)) tellChanged(context, id);
  return {};
};

export const redoAct: Handler<'history.redo'> = (context, { sessionId }) => {
  const { reading, writing } = context.library();
  findSessionAnywhere(reading, sessionId);
  for (const id of redo(writing, sessionId)) tellChanged(context, id);
  return {};
};

export const listActs: Handler<'history.list'> = (context, { sessionId }) => {
  const { reading } = context.library();
  findSession(reading, sessionId);
  return listHistory(reading, sessionId);
};
