import { read } from '../../bridge/read.ts';
import { statusState } from '../../bridge/statusState.ts';
import type { Command } from '../../commands/command.ts';
import { dueFirst } from '../../state/dueFirst.ts';
import { screenState } from '../../state/screenState.ts';
import type { ReviewContext } from './reviewContext.ts';

/** Opens the session that is due next after this one, in the order of the desk. */
async function goToNextSession(sessionId: string): Promise<void> {
  const desk = await read('desk.get', {});
  if (desk === null) return;
  const inOrder = dueFirst(desk.sessions).filter(
    (session) => session.id !== sessionId && session.secondLookOf === null && !session.readOnly && session.coverage < 1,
  );
  const [next] = inOrder;
  if (next === undefined) statusState.getState().tell('No other session is waiting: everything has been looked at.');
  else screenState.getState().go({ kind: 'review', sessionId: next.id });
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
