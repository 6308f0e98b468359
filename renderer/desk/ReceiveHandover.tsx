import { FolderInput, Inbox } from 'lucide-react';
import type { WindowParams } from '../../electron/contract/requests.ts';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { jobsState } from '../state/jobsState.ts';

/** Imports what another desk handed over, to be read, or a review file. */
export function ReceiveHandover() {
  const receive = async (from: WindowParams<'handover.receive'>['from']): Promise<void> => {
    const reply = await rackside().askWindow('handover.receive', { from });
    if (!reply.ok) statusState.getState().tell(reply.problem.sentence);
    else void jobsState.getState().refresh();
  };
  return (
    <section className="receive-handover" aria-label="From another desk">
      <h2>From another desk</h2>
      <p className="soft">
        A handover is imported to be read as it was judged; a review file becomes a session of yours.
      </p>
      <div className="receive-buttons">
        <button type="button" onClick={() => void receive('file')}>
          <Inbox aria-hidden="true" /> Zip or review file
        </button>
        <button type="button" onClick={() => void receive('folder')}>
          <FolderInput aria-hidden="true" /> Folder
        </button>
      </div>
    </section>
  );
}
