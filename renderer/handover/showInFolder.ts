import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';

/** Shows in the system's file manager where a handover was written. */
export async function showInFolder(sessionId: string, jobId: string): Promise<void> {
  const reply = await rackside().askWindow('handover.show', { sessionId, jobId });
  if (!reply.ok) statusState.getState().tell(reply.problem.sentence);
}
