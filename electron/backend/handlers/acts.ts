import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import { type ActOutcome, listHistory, perform, redo, undo } from '../store/acts.ts';
import type { Changes } from '../store/changes.ts';
import { findSession } from '../store/sessions.ts';
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

export const undoAct: Handler<'history.undo'> = (context, { sessionId }) => {
  const { reading, writing } = context.library();
  findSession(reading, sessionId);
  undo(writing, sessionId);
  tellChanged(context, sessionId);
  return {};
};

export const redoAct: Handler<'history.redo'> = (context, { sessionId }) => {
  const { reading, writing } = context.library();
  findSession(reading, sessionId);
  redo(writing, sessionId);
  tellChanged(context, sessionId);
  return {};
};

export const listActs: Handler<'history.list'> = (context, { sessionId }) => {
  const { reading } = context.library();
  findSession(reading, sessionId);
  return listHistory(reading, sessionId);
};
