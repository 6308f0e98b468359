import { Contrast, PackageCheck, Plus, Scale, UserPlus } from 'lucide-react';
import { useEffect, useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { NamePlate } from '../base/NamePlate.tsx';
import { mutate } from '../bridge/mutate.ts';
import { EverywhereCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { ImportDialog } from '../importing/ImportDialog.tsx';
import { JobRow } from '../shared/JobRow.tsx';
import { catalogueState } from '../state/catalogueState.ts';
import { type DeskList, deskState } from '../state/deskState.ts';
import { isOpenJob, jobsState } from '../state/jobsState.ts';
import { libraryState } from '../state/libraryState.ts';
import { type Theme, themeState, themes } from '../state/preferences.ts';
import { screenState } from '../state/screenState.ts';
import { SessionAddDialog, TraineeAddDialog } from './AddDialogs.tsx';
import { DropZone, ReceiveHandover } from './BringIn.tsx';
import { SecondLooks, SessionTable } from './SessionTable.tsx';

type Opened =
  | { readonly kind: 'none' }
  | { readonly kind: 'trainee' }
  | { readonly kind: 'session' }
  | { readonly kind: 'import'; readonly sessionId: string | null; readonly paths: readonly string[] };

/** The sessions read so far, unfinished ones first, and the controls that add more. */
export function DeskScreen() {
  const { loaded, sessions, trainees, next } = deskState(
    useShallow(({ loaded, sessions, trainees, next }) => ({ loaded, sessions, trainees, next })),
  );
  const jobs = jobsState(useShallow((state) => state.jobs.filter(isOpenJob)));
  const library = libraryState((state) => state.library);
  const [opened, setOpened] = useState<Opened>({ kind: 'none' });
  const [panel, setPanel] = useCommandPanel();
  const own = sessions.filter(({ secondLookOf }) => secondLookOf === null);
  const close = (): void => setOpened({ kind: 'none' });
  const importInto = (sessionId: string | null, paths: readonly string[]): void =>
    setOpened({ kind: 'import', sessionId, paths });
  useEffect(() => {
    void deskState.getState().refresh();
    void jobsState.getState().refresh();
    void catalogueState.getState().load();
  }, []);

  return (
    <>
      <header className="screen-head">
        <NamePlate />
        <h1>Desk</h1>
        <span className="soft head-words">
          {library?.kind === 'open' && (library.voice === 'self' ? 'Self-review' : library.coach)}
        </span>
        <span className="head-gap" />
        <ThemePicker />
        <button
          type="button"
          className="quiet-button"
          onClick={() => screenState.getState().go({ kind: 'agreement', firstId: null, secondId: null })}
        >
          <Scale aria-hidden="true" /> Agreement
        </button>
        <button
          type="button"
          disabled={own.length === 0}
          onClick={() => screenState.getState().go({ kind: 'handover', sessionIds: null, from: null })}
        >
          <PackageCheck aria-hidden="true" /> Hand over
        </button>
        <button type="button" onClick={() => setOpened({ kind: 'trainee' })}>
          <UserPlus aria-hidden="true" /> Add trainee
        </button>
        <button
          type="button"
          className="primary"
          disabled={trainees.length === 0}
          onClick={() => setOpened({ kind: 'session' })}
        >
          <Plus aria-hidden="true" /> Add session
        </button>
      </header>
      <main className="desk">
        <section className="desk-sessions" aria-label="Sessions">
          {sessions.length > 0 ? (
            <>
              <SessionTable sessions={own} onDropClips={importInto} onAddClips={(id) => importInto(id, [])} />
              {next.desk !== null && <ShowMore list="desk" />}
              <SecondLooks sessions={sessions} />
              {next.secondLooks !== null && <ShowMore list="secondLooks" />}
            </>
          ) : (
            loaded && (
              <EmptyDesk
                trainees={trainees.length}
                onTrainee={() => setOpened({ kind: 'trainee' })}
                onSession={() => setOpened({ kind: 'session' })}
              />
            )
          )}
        </section>
        <aside className="desk-side">
          <DropZone
            disabled={sessions.length === 0}
            onPaths={(paths) => importInto(null, paths)}
            onChoose={() => importInto(null, [])}
          />
          <ReceiveHandover />
          {jobs.length > 0 && (
            <section aria-label="Jobs">
              <h2>Jobs</h2>
              <ul className="job-list">
                {jobs.map((job) => (
                  <JobRow key={job.id} job={job} />
                ))}
              </ul>
            </section>
          )}
        </aside>
      </main>
      <EverywhereCommands panel={panel} onPanel={setPanel} />
      {opened.kind === 'trainee' && <TraineeAddDialog onClose={close} />}
      {opened.kind === 'session' && <SessionAddDialog trainees={trainees} onClose={close} />}
      {opened.kind === 'import' && (
        <ImportDialog sessionId={opened.sessionId} entryId={null} paths={opened.paths} onClose={close} />
      )}
    </>
  );
}

function ShowMore({ list }: { readonly list: DeskList }) {
  return (
    <button type="button" className="quiet-button" onClick={() => void deskState.getState().loadMore(list)}>
      {list === 'desk' ? 'Show more sessions' : 'Show more second looks'}
    </button>
  );
}

const words: Readonly<Record<Theme, string>> = { system: 'As the system', light: 'Light', dark: 'Dark' };

/** Light, dark, or as the system has it. */
function ThemePicker() {
  const { theme, choose } = themeState();
  return (
    <label className="theme-picker">
      <Contrast aria-hidden="true" />
      <span className="visually-hidden">Colours</span>
      <select
        className="plain-select"
        value={theme}
        onChange={(event) => {
          const chosen = themes.find((one) => one === event.target.value);
          if (chosen !== undefined) choose(chosen);
        }}
      >
        {themes.map((one) => (
          <option key={one} value={one}>
            {words[one]}
          </option>
        ))}
      </select>
    </label>
  );
}

type EmptyDeskProps = { readonly trainees: number; readonly onTrainee: () => void; readonly onSession: () => void };

/** The first steps, while there is nothing to review. */
function EmptyDesk({ trainees, onTrainee, onSession }: EmptyDeskProps) {
  return (
    <div className="empty-desk">
      <h2>Nothing to review yet</h2>
      <ol>
        <li>
          {trainees > 0 ? 'A trainee is there.' : 'Add the person whose lifts you review; for your own, that is you.'}{' '}
          {trainees === 0 && (
            <button type="button" className="primary" onClick={onTrainee}>
              Add the first trainee
            </button>
          )}
        </li>
        <li>
          Add a session: one day of training.{' '}
          {trainees > 0 && (
            <button type="button" className="primary" onClick={onSession}>
              Add the first session
            </button>
          )}
        </li>
        <li>
          Drop clips on it, one clip a set, from any phone. They are copied into your library and stay on this machine.
        </li>
        <li>Open it: play, mark the reps, judge them on the card, and write the letter.</li>
      </ol>
      <p>
        To look round first, add the sample: an invented trainee’s session, judged, with its letter.{' '}
        <button type="button" onClick={() => void mutate('library.addDemo', {})}>
          Add the sample session
        </button>
      </p>
    </div>
  );
}
