import { read } from '../../bridge/read.ts';
import { statusState } from '../../bridge/statusState.ts';
import { dueFirst } from '../../state/dueFirst.ts';
import { screenState } from '../../state/screenState.ts';

/** Opens the session that is due next after this one, in the order of the desk. */
export async function goToNextSession(sessionId: string): Promise<void> {
  const desk = await read('desk.get', {});
  if (desk === null) return;
  const inOrder = dueFirst(desk.sessions).filter(
    (session) => session.id !== sessionId && session.secondLookOf === null && !session.readOnly && session.coverage < 1,
  );
  const [next] = inOrder;
  if (next === undefined) statusState.getState().tell('No other session is waiting: everything has been looked at.');
  else screenState.getState().go({ kind: 'review', sessionId: next.id });
}
