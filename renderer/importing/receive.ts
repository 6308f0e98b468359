import { create } from 'zustand';
import type { WindowParams } from '../../electron/contract/requests.ts';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { jobsState } from '../state/jobsState.ts';
import { sayProblem } from '../words/sayProblem.ts';

/** Footage outside of a review file's folder that a person has to see before the file is imported; none: nothing waits. */
export const footageOutsideState = create<{ readonly paths: readonly string[] }>()(() => ({ paths: [] }));

/** Imports what another coach handed over, or a review file: one the person chooses, or the next one that the system named. */
export async function receive(from: WindowParams<'handover.receive'>['from']): Promise<void> {
  const reply = await rackside().askWindow('handover.receive', { from });
  if (!reply.ok) statusState.getState().tell(sayProblem(reply.problem));
  else if (reply.value.footageOutside.length > 0) footageOutsideState.setState({ paths: reply.value.footageOutside });
  else if (reply.value.jobId !== null) void jobsState.getState().refresh();
}
