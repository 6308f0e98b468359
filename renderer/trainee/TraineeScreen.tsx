import { ArrowLeft, Pencil } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { Result } from '../../electron/contract/requests.ts';
import type { Catalogue, Caution } from '../../engine/exercises/catalogue.ts';
import { read } from '../bridge/read.ts';
import { EverywhereCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { NamesField } from '../shared/NamesField.tsx';
import { TraineeEditDialog } from '../shared/TraineeEditDialog.tsx';
import { traineeWords } from '../shared/traineeWords.ts';
import { catalogueState } from '../state/catalogueState.ts';
import { deskState } from '../state/deskState.ts';
import { screenState } from '../state/screenState.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { sayTrainee } from '../words/sayTrainee.ts';
import { LoadAndSpeed } from './LoadAndSpeed.tsx';
import { SessionHistory } from './SessionHistory.tsx';
import { linesOf, spanOf, TrendChart } from './TrendChart.tsx';

/** One trainee over time: grades, each criterion, what became of each fault, and the cautions that apply. */
export function TraineeScreen({ traineeId }: { readonly traineeId: string }) {
  const trainee = deskState((state) => state.trainees.find(({ id }) => id === traineeId));
  const [history, setHistory] = useState<Result<'trainees.history'> | null>(null);
  const [catalogue, setCatalogue] = useState<Catalogue | null>(null);
  const [editing, setEditing] = useState(false);
  /** How often the trainee was changed here: the history is judged anew by what is known of them. */
  const [changes, setChanges] = useState(0);
  const [panel, setPanel] = useCommandPanel();
  // biome-ignore lint/correctness/useExhaustiveDependencies: read again after each change
  useEffect(() => {
    void deskState.getState().refresh();
    let stale = false;
    void (async () => {
      const answer = await read('trainees.history', { traineeId });
      const judgedBy = answer === null ? null : await catalogueState.getState().fetch(answer.rubricVersion);
      if (stale) return;
      setCatalogue(judgedBy);
      setHistory(answer);
    })();
    return () => {
      stale = true;
    };
  }, [traineeId, changes]);
  const span = history === null ? null : spanOf(history.points);
  const lines = history === null || catalogue === null ? [] : linesOf(history.points, catalogue.rubric.criteria);
  return (
    <>
      <header className="screen-head">
        <button type="button" className="quiet-button" onClick={() => screenState.getState().go({ kind: 'desk' })}>
          <ArrowLeft aria-hidden="true" /> {sayDesk('title')}
        </button>
        <h1>{trainee?.name ?? sayTrainee('someTrainee')}</h1>
        {trainee !== undefined && <span className="soft head-words">{traineeWords(trainee)}</span>}
        {trainee !== undefined && (
          <button type="button" className="quiet-button" onClick={() => setEditing(true)}>
            <Pencil aria-hidden="true" /> {sayTrainee('edit')}
          </button>
        )}
        <span className="head-gap" />
        {trainee !== undefined && (
          <span className="field-inline">
            <span>{sayTrainee('nameShown')}</span>
            <NamesField traineeId={trainee.id} traineeName={trainee.name} />
          </span>
        )}
      </header>
      {history !== null && catalogue !== null && (
        <main className="trainee">
          <section aria-label={sayTrainee('trends')}>
            <h2>{sayTrainee('trends')}</h2>
            {lines.length === 0 || span === null ? (
              <p className="soft">{sayTrainee('noTrends')}</p>
            ) : (
              <div className="trend-charts">
                {lines.map((line) => (
                  <TrendChart key={line.name} line={line} span={span} />
                ))}
              </div>
            )}
          </section>
          <LoadAndSpeed traineeId={traineeId} units={trainee?.units ?? 'kg'} catalogue={catalogue} />
          <SessionHistory points={history.points} catalogue={catalogue} />
          {history.cautions.length > 0 && (
            <section aria-label={sayTrainee('cautions')}>
              <h2>{sayTrainee('cautionsThatApply')}</h2>
              <ul className="trainee-cautions">
                {history.cautions.map(inLanguageOf(catalogue)).map((caution) => (
                  <li key={caution.id}>
                    <strong>{caution.topic}.</strong> {caution.text}
                  </li>
                ))}
              </ul>
            </section>
          )}
        </main>
      )}
      {editing && trainee !== undefined && (
        <TraineeEditDialog
          trainee={trainee}
          onSaved={() => setChanges(changes + 1)}
          onClose={() => setEditing(false)}
        />
      )}
      <EverywhereCommands panel={panel} onPanel={setPanel} />
    </>
  );
}

/** A caution as the catalogue words it: the history names those that apply. */
const inLanguageOf =
  ({ cautions }: Catalogue) =>
  (caution: Caution): Caution =>
    cautions.find(({ id }) => id === caution.id) ?? caution;
