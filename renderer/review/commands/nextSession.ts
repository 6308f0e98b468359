import type { Result } from '../../../electron/contract/requests.ts';
import { read } from '../../bridge/read.ts';
import { statusState } from '../../bridge/statusState.ts';
import type { Command } from '../../commands/command.ts';
import { dueFirst } from '../../state/dueFirst.ts';
import { screenState } from '../../state/screenState.ts';
import type { ReviewContext } from './reviewContext.ts';

/** Opens the session that is due next after this one, in the order of the desk. */
async function goToNextSession(sessionId: string): Promise<void> {
  let after: string | null = null;
  do {
    const page: Result<'desk.sessions'> | null = await read('desk.sessions', { list: 'desk', after });
    if (page === null) return;
    const next = dueFirst(page.sessions).find(
      ({ id, readOnly, coverage }) => id !== sessionId && !readOnly && coverage < 1,
    );
    if (next !== undefined) return screenState.getState().go({ kind: 'review', sessionId: next.id });
    after = page.next;
  } while (after !== null);
  statusState.getState().tell('No other session is waiting: everything has been looked at.');
}

export const nextSession: Command<ReviewContext> = {
  id: 'nextSession',
  group: 'Anywhere',
  label: 'Next session due',
  keys: ['Shift+N'],
  button: 'Next session due',
  readOnly: 'allowed',
  run: ({ sessionId }) => goToNextSession(sessionId),
};
