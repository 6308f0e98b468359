import { Film, FolderInput, Inbox } from 'lucide-react';
import { useState } from 'react';
import type { WindowParams } from '../../electron/contract/requests.ts';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { jobsState } from '../state/jobsState.ts';

type DropZoneProps = {
  readonly disabled: boolean;
  readonly onPaths: (paths: readonly string[]) => void;
  readonly onChoose: () => void;
};

/** Where clips are dropped; a button does the same from a list of files. */
export function DropZone({ disabled, onPaths, onChoose }: DropZoneProps) {
  const [over, setOver] = useState(false);
  return (
    <section
      className="drop-zone"
      aria-label="Bring in clips"
      data-testid="drop-zone"
      data-over={over}
      onDragOver={(event) => {
        if (disabled || !holdsFiles(event.dataTransfer)) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        const paths = droppedPaths(event.dataTransfer);
        if (!disabled && paths.length > 0) onPaths(paths);
      }}
    >
      <Film aria-hidden="true" />
      <p>
        {disabled ? 'Add a session first; then drop its clips here.' : 'Drop clips here, or straight onto a session.'}
      </p>
      <button type="button" disabled={disabled} onClick={onChoose}>
        Add clips
      </button>
      <p className="soft">They are copied into your library. Nothing leaves this computer.</p>
    </section>
  );
}

export const holdsFiles = (transfer: DataTransfer): boolean => transfer.types.includes('Files');

/** Where the dropped files lie; what has no path (a picture dragged out of a page) is left out. */
export const droppedPaths = (transfer: DataTransfer): readonly string[] =>
  [...transfer.files].map((file) => rackside().pathOfFile(file)).filter((path) => path !== '');

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
