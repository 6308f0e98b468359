import { Inbox, PackageCheck, Plus, Scale, Settings, Trash2, UserPen, UserPlus, Users } from 'lucide-react';
import { useEffect, useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { NamePlate } from '../base/NamePlate.tsx';
import { settings as settingsCommand } from '../commands/everywhereCommands.ts';
import { ScreenCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { ImportDialog } from '../importing/ImportDialog.tsx';
import { JobsPanel } from '../shared/JobsPanel.tsx';
import { TraineeAddDialog } from '../shared/TraineeAddDialog.tsx';
import { TraineeEditDialog } from '../shared/TraineeEditDialog.tsx';
import { catalogueState } from '../state/catalogueState.ts';
import { type DeskList, deskState, dueInOrder } from '../state/deskState.ts';
import { inboxState } from '../state/inboxState.ts';
import { isOpenJob, jobsState } from '../state/jobsState.ts';
import { libraryState } from '../state/libraryState.ts';
import { useIsSelfReview, useMyself } from '../state/mine.ts';
import { goToNextDue } from '../state/night.ts';
import { screenState } from '../state/screenState.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { sayInbox } from '../words/sayInbox.ts';
import { NoTraineeDialog, SessionAddDialog } from './AddDialogs.tsx';
import { deskCommands, deskContext, openBin, openTrainees } from './deskCommands.ts';
import { EmptyDesk } from './EmptyDesk.tsx';
import { DropZone, ReceiveHandover } from './ImportClips.tsx';
import { NightBar } from './NightBar.tsx';
import { SecondLooks } from './SecondLooks.tsx';
import { SessionTable } from './SessionTable.tsx';

type Opened =
  | { readonly kind: 'none' }
  /** `next`: what is added after the trainee. */
  | { readonly kind: 'trainee'; readonly next?: 'session' }
  | { readonly kind: 'session' }
  | { readonly kind: 'import'; readonly sessionId: string; readonly paths: readonly string[] };

/** The sessions read so far, unfinished ones first, and the controls that add more. */
export function DeskScreen() {
  const { loaded, sessions, trainees, next } = deskState(
    useShallow(({ loaded, sessions, trainees, next }) => ({ loaded, sessions, trainees, next })),
  );
  const hasJobs = jobsState((state) => state.jobs.some(isOpenJob));
  const library = libraryState((state) => state.library);
  const [opened, setOpened] = useState<Opened>({ kind: 'none' });
  const [panel, setPanel] = useCommandPanel();
  const inboxCount = inboxState((state) => state.count ?? 0);
  const self = useIsSelfReview();
  const myself = useMyself();
  const here = trainees.filter(({ archived }) => !archived);
  const own = sessions.filter(({ secondLookOf }) => secondLookOf === null);
  const close = (): void => setOpened({ kind: 'none' });
  const importInto = (sessionId: string, paths: readonly string[]): void =>
    setOpened({ kind: 'import', sessionId, paths });
  useEffect(() => {
    void deskState.getState().refresh();
    void jobsState.getState().refresh();
    void inboxState.getState().refreshCount();
    void catalogueState.getState().load();
  }, []);

  return (
    <>
      <header className="screen-head">
        <NamePlate />
        <h1>{sayDesk('title')}</h1>
        <span className="soft head-words">
          {library?.kind === 'open' && (self ? sayDesk('selfReview') : library.coach)}
        </span>
        <span className="head-gap" />
        <button type="button" className="quiet-button" onClick={() => openTrainees.run(deskContext, 'pressed')}>
          <Users aria-hidden="true" /> {openTrainees.button?.()}
        </button>
        <button type="button" className="quiet-button" onClick={() => openBin.run(deskContext, 'pressed')}>
          <Trash2 aria-hidden="true" /> {openBin.button?.()}
        </button>
        <button
          type="button"
          className="icon-button"
          aria-label={settingsCommand.button?.()}
          title={settingsCommand.button?.()}
          onClick={() => setPanel('settings')}
        >
          <Settings aria-hidden="true" />
        </button>
        <button
          type="button"
          className="quiet-button"
          onClick={() => screenState.getState().go({ kind: 'agreement', firstId: null, secondId: null })}
        >
          <Scale aria-hidden="true" /> {sayDesk('agreement')}
        </button>
        <button type="button" onClick={() => screenState.getState().go({ kind: 'inbox' })}>
          <Inbox aria-hidden="true" />{' '}
          {inboxCount === 0 ? sayInbox('open') : sayInbox('openCount', { count: inboxCount })}
        </button>
        <button
          type="button"
          onClick={() => screenState.getState().go({ kind: 'handover', sessionIds: null, from: null })}
        >
          <PackageCheck aria-hidden="true" /> {sayDesk('handOver')}
        </button>
        <button type="button" onClick={() => setOpened({ kind: 'trainee' })}>
          {self ? <UserPen aria-hidden="true" /> : <UserPlus aria-hidden="true" />} {sayDesk('addTrainee')}
        </button>
        <button type="button" onClick={() => setOpened({ kind: 'session' })}>
          <Plus aria-hidden="true" /> {sayDesk('addSession')}
        </button>
      </header>
      <main className="desk">
        <section className="desk-sessions" aria-label={sayDesk('sessions')}>
          {sessions.length > 0 ? (
            <>
              <NightBar first={dueInOrder(own)[0] ?? null} sessions={sessions} onGo={() => void goToNextDue(null)} />
              <SessionTable sessions={own} onDropClips={importInto} onAddClips={(id) => importInto(id, [])} />
              {next.due !== null && <ShowMore list="due" />}
              {next.done !== null && <ShowMore list="done" />}
              <SecondLooks sessions={sessions} />
              {next.secondLooks !== null && <ShowMore list="secondLooks" />}
            </>
          ) : (
            loaded && (
              <EmptyDesk
                trainees={here.length}
                onTrainee={() => setOpened({ kind: 'trainee' })}
                onSession={() => setOpened({ kind: 'session' })}
              />
            )
          )}
        </section>
        <aside className="desk-side">
          <DropZone />
          <ReceiveHandover />
          {hasJobs && (
            <section aria-label={sayDesk('jobs')}>
              <h2>{sayDesk('jobs')}</h2>
              <JobsPanel />
            </section>
          )}
        </aside>
      </main>
      <ScreenCommands commands={deskCommands} context={deskContext} sessionId={null} panel={panel} onPanel={setPanel} />
      {opened.kind === 'trainee' &&
        (myself === null ? (
          <TraineeAddDialog
            onClose={close}
            onAdded={opened.next === undefined ? undefined : () => setOpened({ kind: 'session' })}
          />
        ) : (
          <TraineeEditDialog trainee={myself} onClose={close} />
        ))}
      {opened.kind === 'session' &&
        (here.length === 0 ? (
          <NoTraineeDialog onAdd={() => setOpened({ kind: 'trainee', next: 'session' })} onClose={close} />
        ) : (
          <SessionAddDialog trainees={here} onClose={close} />
        ))}
      {opened.kind === 'import' && (
        <ImportDialog sessionId={opened.sessionId} entryId={null} paths={opened.paths} onClose={close} />
      )}
    </>
  );
}

const moreWords = { due: 'moreDue', done: 'moreDone', secondLooks: 'moreSecondLooks' } as const;

function ShowMore({ list }: { readonly list: DeskList }) {
  return (
    <button type="button" className="quiet-button" onClick={() => void deskState.getState().loadMore(list)}>
      {sayDesk(moreWords[list])}
    </button>
  );
}
