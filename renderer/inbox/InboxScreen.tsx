import { ArrowLeft, FilePlus2, FolderPlus, Inbox, PackageOpen } from 'lucide-react';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import type { InboxFile, InboxSession } from '../../electron/contract/inbox.ts';
import { mutate } from '../bridge/mutate.ts';
import { CommandButton } from '../commands/CommandButton.tsx';
import { availabilityOf, runCommand } from '../commands/command.ts';
import { ScreenCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { droppedPaths, holdsFiles } from '../importing/droppedPaths.ts';
import { takeIn } from '../importing/takeIn.ts';
import { JobRow } from '../shared/JobRow.tsx';
import { catalogueState } from '../state/catalogueState.ts';
import { deskState } from '../state/deskState.ts';
import { inboxState } from '../state/inboxState.ts';
import { isOpenJob, jobsState } from '../state/jobsState.ts';
import { useIsSelfReview } from '../state/mine.ts';
import { screenState } from '../state/screenState.ts';
import { sayInbox } from '../words/sayInbox.ts';
import { readyToBring } from './bringIn.ts';
import { FileDetails } from './FileDetails.tsx';
import { InboxTable } from './InboxTable.tsx';
import { columnsFor, hindranceOf } from './inboxColumns.ts';
import { addFiles, addFolder, bringIn, type InboxContext, inboxCommands } from './inboxCommands.ts';
import { targets } from './inboxGrid.ts';
import { useInboxGrid } from './useInboxGrid.ts';
import { WatchedFolder } from './WatchedFolder.tsx';

const nothing: readonly InboxFile[] = [];
const noSessions: readonly InboxSession[] = [];

/** What came in and belongs to no session: each clip with a guess, to be corrected and brought in all at once. */
export function InboxScreen() {
  const inbox = inboxState((state) => state.inbox);
  const trainees = deskState((state) => state.trainees);
  const catalogue = catalogueState((state) => state.catalogue);
  const jobs = jobsState(useShallow((state) => state.jobs.filter((job) => job.kind === 'arrive' && isOpenJob(job))));
  const self = useIsSelfReview();
  const [panel, setPanel] = useCommandPanel();
  const [over, setOver] = useState(false);
  const [removed, setRemoved] = useState<readonly string[]>([]);
  const files = inbox?.files ?? nothing;
  const columns = useMemo(() => columnsFor(self), [self]);
  const use = useInboxGrid(files, columns);
  const latest = useRef(files);
  latest.current = files;
  const context = useMemo(
    (): InboxContext => ({
      readOnly: false,
      get files() {
        return latest.current;
      },
    }),
    [],
  );
  const sessions = inbox?.sessions ?? noSessions;
  const names = useMemo(
    () => ({ trainees, sessions, catalogue: catalogue ?? { exercises: [] } }),
    [trainees, sessions, catalogue],
  );
  useEffect(() => {
    void inboxState.getState().refresh();
    void deskState.getState().refresh();
    void jobsState.getState().refresh();
    void catalogueState.getState().load();
  }, []);

  const remove = async (arrivalIds: readonly string[]): Promise<void> => {
    if ((await mutate('inbox.remove', { arrivalIds: [...arrivalIds] })) !== null) setRemoved(arrivalIds);
  };
  const putBack = async (): Promise<void> => {
    if ((await mutate('inbox.putBack', { arrivalIds: [...removed] })) !== null) setRemoved([]);
  };
  const ready = readyToBring(files).length;
  const twins = files.filter((file) => hindranceOf(file) === 'twin').map(({ arrivalId }) => arrivalId);
  const chosen = targets(
    use.grid,
    files.map(({ arrivalId }) => arrivalId),
  );
  const atCursor = files.find(({ arrivalId }) => arrivalId === use.grid.cursor?.id);

  return (
    <>
      <header className="screen-head">
        <button type="button" className="quiet-button" onClick={() => screenState.getState().go({ kind: 'desk' })}>
          <ArrowLeft aria-hidden="true" /> {sayInbox('desk')}
        </button>
        <h1>{sayInbox('title')}</h1>
        <span className="soft head-words">
          {files.length > 0 &&
            sayInbox('headWords', {
              count: files.length + (inbox?.more ?? 0),
              ready,
              megabytes: Math.ceil((inbox?.bytes ?? 0) / 1_000_000),
            })}
        </span>
        <span className="head-gap" />
        <CommandButton command={addFiles} availability={{ can: true }} onRun={() => runCommand(addFiles, context)}>
          <FilePlus2 aria-hidden="true" />
        </CommandButton>
        <CommandButton command={addFolder} availability={{ can: true }} onRun={() => runCommand(addFolder, context)}>
          <FolderPlus aria-hidden="true" />
        </CommandButton>
        <CommandButton
          command={bringIn}
          className="primary"
          words={sayInbox('bringIn', { count: ready })}
          availability={availabilityOf(bringIn, context)}
          onRun={() => runCommand(bringIn, context)}
        >
          <Inbox aria-hidden="true" />
        </CommandButton>
      </header>
      <main
        className="inbox"
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
          void takeIn(droppedPaths(event.dataTransfer));
        }}
      >
        <section className="inbox-files" aria-label={sayInbox('clips')}>
          {files.length > 0 ? (
            <InboxTable files={files} names={names} use={use} onRemove={(ids) => void remove(ids)} />
          ) : (
            inbox !== null && (
              <div className="empty-desk">
                <h2>
                  <PackageOpen aria-hidden="true" /> {sayInbox('empty')}
                </h2>
                <p>{sayInbox('emptyWords')}</p>
              </div>
            )
          )}
          {inbox !== null && inbox.more > 0 && (
            <p className="soft inbox-more">{sayInbox('more', { count: inbox.more })}</p>
          )}
        </section>
        <aside className="inbox-side">
          {jobs.length > 0 && (
            <section aria-label={sayInbox('jobs')}>
              <ul className="job-list">
                {jobs.map((job) => (
                  <JobRow key={job.id} job={job} />
                ))}
              </ul>
            </section>
          )}
          {files.length > 0 && (
            <section className="inbox-acts">
              <p aria-live="polite">{sayInbox('selected', { count: use.grid.selected.size })}</p>
              <button type="button" disabled={chosen.length === 0} onClick={() => void remove(chosen)}>
                {sayInbox('remove', { count: chosen.length })}
              </button>
              {twins.length > 0 && (
                <button type="button" onClick={() => void remove(twins)}>
                  {sayInbox('removeTwins', { count: twins.length })}
                </button>
              )}
              <p className="soft">{sayInbox('hint')}</p>
            </section>
          )}
          {removed.length > 0 && (
            <p role="status">
              {sayInbox('removed', { count: removed.length })}{' '}
              <button type="button" className="quiet-button" onClick={() => void putBack()}>
                {sayInbox('putBack')}
              </button>
            </p>
          )}
          {atCursor !== undefined && <FileDetails file={atCursor} columns={columns} names={names} />}
          <WatchedFolder watch={inbox?.watch ?? null} />
        </aside>
      </main>
      <ScreenCommands commands={inboxCommands} context={context} sessionId={null} panel={panel} onPanel={setPanel} />
    </>
  );
}
