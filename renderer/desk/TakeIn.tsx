import { FolderInput, Inbox } from 'lucide-react';
import type { WindowParams } from '../../electron/contract/requests.ts';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { jobsState } from '../state/jobsState.ts';

/** Takes in what another desk handed over, to be read, or a review file. */
export function TakeIn() {
  const takeIn = async (from: WindowParams<'handover.takeIn'>['from']): Promise<void> => {
    const reply = await rackside().askWindow('handover.takeIn', { from });
    if (!reply.ok) statusState.getState().tell(reply.problem.sentence);
    else void jobsState.getState().refresh();
  };
  return (
    <section className="take-in" aria-label="From another desk">
      <h2>From another desk</h2>
      <p className="soft">
        A handover is taken in to be read as it was judged; a review file becomes a session of yours.
      </p>
      <div className="take-in-ways">
        <button type="button" onClick={() => void takeIn('file')}>
          <Inbox aria-hidden="true" /> Zip or review file
        </button>
        <button type="button" onClick={() => void takeIn('folder')}>
          <FolderInput aria-hidden="true" /> Folder
        </button>
      </div>
    </section>
  );
}
