import { actorName } from '../context/actorName.ts';
import type { Context } from '../context/context.ts';
import { tellChanged } from '../context/tellChanged.ts';
import { type ActOutcome, perform } from '../store/acts.ts';
import type { Changes } from '../store/changes.ts';

/** Performs an act of a person on a session, tells the screens after the commit, and gives what the act gave. */
export function actOnSession<T extends object>(
  context: Context,
  sessionId: string,
  work: (changes: Changes) => ActOutcome<T>,
): T {
  const library = context.library();
  const value = perform(library.writing, { sessionId, who: actorName(library), kind: 'undoable' }, work);
  tellChanged(context, sessionId);
  return value;
}
