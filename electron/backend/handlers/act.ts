import type { HistoryState } from '../../contract/requests.ts';
import { actorName } from '../actorName.ts';
import { type Context, tellChanged } from '../context.ts';
import { type ActOutcome, perform } from '../store/acts.ts';
import type { Changes } from '../store/changes.ts';
import { readHistoryState } from '../store/history.ts';

/**
 * Performs an action of a person on a session, tells the screens after the commit, and gives what the action gave
 * together with the session's new undo and redo.
 */
export function actOnSession<T extends object>(
  context: Context,
  sessionId: string,
  work: (changes: Changes) => ActOutcome<T>,
): T & { readonly history: HistoryState } {
  const library = context.library();
  const value = perform(library.writing, { sessionId, who: actorName(library), kind: 'undoable' }, work);
  tellChanged(context, sessionId);
  return { ...value, history: readHistoryState(library.reading, sessionId) };
}
