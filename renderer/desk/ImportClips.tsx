import { Film, FolderInput, Inbox } from 'lucide-react';
import { useState } from 'react';
import { droppedPaths, holdsFiles } from '../importing/droppedPaths.ts';
import { receive } from '../importing/receive.ts';
import { takeFiles, takeFolder, takeIn } from '../importing/takeIn.ts';
import { inboxState } from '../state/inboxState.ts';
import { screenState } from '../state/screenState.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { sayInbox } from '../words/sayInbox.ts';

/** Where clips and folders are dropped, on their way into the inbox; buttons do the same from a list. */
export function DropZone() {
  const [over, setOver] = useState(false);
  return (
    <section
      className="drop-zone"
      aria-label={sayDesk('importClips')}
      data-testid="drop-zone"
      data-over={over}
      onDragOver={(event) => {
        if (!holdsFiles(event.dataTransfer)) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        const paths = droppedPaths(event.dataTransfer);
        if (paths.length > 0) toInbox(() => takeIn(paths));
      }}
    >
      <Film aria-hidden="true" />
      <p>{sayDesk('dropClips')}</p>
      <div className="receive-buttons">
        <button type="button" onClick={() => toInbox(takeFiles)}>
          {sayInbox('addFiles')}
        </button>
        <button type="button" onClick={() => toInbox(takeFolder)}>
          {sayInbox('addFolder')}
        </button>
      </div>
      <p className="soft">{sayDesk('copied')}</p>
    </section>
  );
}

/** Takes something in and shows it there. */
function toInbox(take: () => Promise<void>): void {
  void take().then(() => {
    if ((inboxState.getState().count ?? 0) > 0) screenState.getState().go({ kind: 'inbox' });
  });
}

/** Imports what another coach handed over, to be read, or a review file. */
export function ReceiveHandover() {
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
