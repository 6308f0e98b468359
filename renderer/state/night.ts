import type { SessionSummary } from '../../electron/contract/desk.ts';
import { nextStep } from '../../engine/night/sessionState.ts';
import { read } from '../bridge/read.ts';
import { statusState } from '../bridge/statusState.ts';
import { sayNight } from '../words/sayNight.ts';
import { screenState } from './screenState.ts';

/** Opens a session where its next step is done. */
export function openNextStep(session: SessionSummary): void {
  const { go } = screenState.getState();
  const step = nextStep(session);
  if (step === 'letter') go({ kind: 'letter', sessionId: session.id });
  else if (step === 'import') go({ kind: 'inbox' });
  else go({ kind: 'review', sessionId: session.id });
}

/** Opens the session that is due after another one; where no other is, the desk says so. */
export async function goToNextDue(after: string | null): Promise<void> {
  const next = await read('night.next', { after });
  if (next === null) return;
  if (next.session !== null) return openNextStep(next.session);
  const { screen, go } = screenState.getState();
  if (screen.kind !== 'desk') go({ kind: 'desk' });
  statusState.getState().tell(sayNight('nothingDue'));
}

/** Whether a session still has to be sent: it is one's own, and not sent as it is now. */
export async function isStillDue(sessionId: string): Promise<boolean> {
  const session = await read('desk.session', { sessionId });
  return (
    session !== null &&
    session.secondLookOf === null &&
    !session.readOnly &&
    !session.finished &&
    session.state !== 'sent'
  );
}
