import { useEffect, useMemo, useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { views } from '../../engine/exercises/exercise.ts';
import { criterionName } from '../../engine/sheet/flagRows.ts';
import { sayJudgedFromHere, sayViewName } from '../../engine/wording/sayView.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { ExercisePicker } from '../base/ExercisePicker.tsx';
import { Field } from '../base/fields.tsx';
import { day } from '../base/figures.ts';
import { mutate } from '../bridge/mutate.ts';
import { rackside } from '../bridge/rackside.ts';
import { read } from '../bridge/read.ts';
import { statusState } from '../bridge/statusState.ts';
import { catalogueState } from '../state/catalogueState.ts';
import { deskState } from '../state/deskState.ts';
import { useIsMine } from '../state/mine.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayImporting } from '../words/sayImporting.ts';
import { sayProblem } from '../words/sayProblem.ts';

type ImportDialogProps = {
  readonly sessionId: string | null;
  readonly entryId: string | null;
  readonly paths: readonly string[];
  readonly onClose: () => void;
};

/** The last part of a path, of either kind of system. */
const fileName = (path: string): string => path.split(/[\\/]/).at(-1) ?? path;

type KnownEntry = { readonly id: string; readonly exercise: string };

const ofEntry = 'entry:';
const noExercises = { exercises: [] };

/** Which clips go where: session, exercise, view. One job a file reads them in. */
export function ImportDialog({ sessionId, entryId, paths: given, onClose }: ImportDialogProps) {
  const sessions = deskState(
    useShallow((state) =>
      state.sessions.filter((one) => !one.readOnly && (one.secondLookOf === null || one.id === sessionId)),
    ),
  );
  const catalogue = catalogueState((state) => state.catalogue);
  const language = deskLanguage((state) => state.language);
  const isMine = useIsMine();
  const [session, setSession] = useState(sessionId ?? sessions[0]?.id ?? '');
  const [entries, setEntries] = useState<readonly KnownEntry[]>([]);
  const [target, setTarget] = useState(entryId === null ? '' : `${ofEntry}${entryId}`);
  const [view, setView] = useState('');
  const [paths, setPaths] = useState(given);

  useEffect(() => {
    if (sessionId !== null) void deskState.getState().include(sessionId);
  }, [sessionId]);
  useEffect(() => {
    if (session === '') return;
    let stale = false;
    void read('review.get', { sessionId: session }).then((answer) => {
      if (answer !== null && !stale) setEntries(answer.review.entries);
    });
    return () => {
      stale = true;
    };
  }, [session]);

  const chooseSession = (id: string): void => {
    setSession(id);
    setEntries([]);
    // An exercise of the session before is not one of this one's.
    if (target.startsWith(ofEntry)) setTarget('');
  };
  const choose = async (): Promise<void> => {
    const reply = await rackside().askWindow('clips.choose', {});
    if (!reply.ok) return statusState.getState().tell(sayProblem(reply.problem));
    setPaths((known) => [...new Set([...known, ...reply.value.paths])]);
  };
  const startImport = async (): Promise<void> => {
    const into = target.startsWith(ofEntry) ? { entryId: target.slice(ofEntry.length) } : { exercise: target };
    const started = await mutate('clips.import', {
      sessionId: session,
      ...into,
      view: chosenView ?? null,
      paths: [...paths],
    });
    if (started !== null) onClose();
  };
  const inSession = useMemo(
    () => entries.map(({ id, exercise }) => ({ value: `${ofEntry}${id}`, exercise })),
    [entries],
  );

  const exerciseId = target.startsWith(ofEntry)
    ? entries.find(({ id }) => id === target.slice(ofEntry.length))?.exercise
    : target;
  const exercise = catalogue?.exercises.find(({ id }) => id === exerciseId);
  const chosenView = views.find((known) => known === view);
  const judgedWords =
    catalogue && exercise && chosenView
      ? sayJudgedFromHere(
          { exercise, view: chosenView, nameOf: (id) => criterionName(catalogue, id, exercise.id) },
          language,
        )
      : null;

  return (
    <FormDialog
      title={sayImporting('title')}
      doing={sayImporting('import')}
      ready={paths.length === 0 || target === '' || session === '' ? 'waiting' : 'ready'}
      onDone={startImport}
      onClose={onClose}
    >
      <Field label={sayImporting('session')}>
        <select required value={session} onChange={(e) => chooseSession(e.target.value)}>
          {sessions.map((known) => (
            <option key={known.id} value={known.id}>
              {[...(isMine(known) ? [] : [known.traineeName]), day(known.date), known.title]
                .filter((part) => part !== '')
                .join(', ')}
            </option>
          ))}
        </select>
      </Field>
      <ExercisePicker
        catalogue={catalogue ?? noExercises}
        inSession={inSession}
        chosen={target}
        placeholder={sayImporting('chooseExercise')}
        onChoose={setTarget}
      />
      <Field label={sayImporting('filmedFrom')}>
        <select value={view} onChange={(e) => setView(e.target.value)}>
          <option value="">{sayImporting('viewNotStated')}</option>
          {views.map((known) => (
            <option key={known} value={known}>
              {sayViewName(known, language)}
            </option>
          ))}
        </select>
      </Field>
      {judgedWords !== null && <p className="soft">{judgedWords}.</p>}
      <div className="chosen-files">
        <button type="button" onClick={() => void choose()}>
          {sayImporting('chooseFiles')}
        </button>
        <span data-testid="chosen-files">
          {paths.length === 0
            ? sayImporting('noClips')
            : sayImporting('chosen', { count: paths.length, files: paths.map(fileName).join(', ') })}
        </span>
      </div>
    </FormDialog>
  );
}
