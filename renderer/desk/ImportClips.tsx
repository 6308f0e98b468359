import { Film, FolderInput, Inbox } from 'lucide-react';
import { useState } from 'react';
import type { WindowParams } from '../../electron/contract/requests.ts';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { jobsState } from '../state/jobsState.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { sayProblem } from '../words/sayProblem.ts';

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
      aria-label={sayDesk('importClips')}
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
      <p>{sayDesk(disabled ? 'addSessionFirst' : 'dropClips')}</p>
      <button type="button" disabled={disabled} onClick={onChoose}>
        {sayDesk('importClips')}
      </button>
      <p className="soft">{sayDesk('copied')}</p>
    </section>
  );
}

export const holdsFiles = (transfer: DataTransfer): boolean => transfer.types.includes('Files');

/** Where the dropped files lie; what has no path (a picture dragged out of a page) is left out. */
export const droppedPaths = (transfer: DataTransfer): readonly string[] =>
  [...transfer.files].map((file) => rackside().pathOfFile(file)).filter((path) => path !== '');

/** Imports what another coach handed over, to be read, or a review file. */
export function ReceiveHandover() {
  const receive = async (from: WindowParams<'handover.receive'>['from']): Promise<void> => {
    const reply = await rackside().askWindow('handover.receive', { from });
    if (!reply.ok) statusState.getState().tell(sayProblem(reply.problem));
    else void jobsState.getState().refresh();
  };
  return (
    <section className="receive-handover" aria-label={sayDesk('fromAnotherCoach')}>
      <h2>{sayDesk('fromAnotherCoach')}</h2>
      <p className="soft">{sayDesk('receiveWords')}</p>
      <div className="receive-buttons">
        <button type="button" onClick={() => void receive('file')}>
          <Inbox aria-hidden="true" /> {sayDesk('receiveFile')}
        </button>
        <button type="button" onClick={() => void receive('folder')}>
          <FolderInput aria-hidden="true" /> {sayDesk('receiveFolder')}
        </button>
      </div>
    </section>
  );
}
