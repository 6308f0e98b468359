import { screenState } from '../state/screenState.ts';

/** Goes from a session to where it is handed over. */
export const goToHandover = (sessionId: string): void =>
  screenState.getState().go({ kind: 'handover', sessionIds: [sessionId], from: sessionId });
