import { Archive, ArchiveRestore, ArrowLeft, ChartLine, Pencil, UserPlus } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { NamedTrainee } from '../../electron/contract/trainees.ts';
import { mutate } from '../bridge/mutate.ts';
import { EverywhereCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { TraineeAddDialog } from '../shared/TraineeAddDialog.tsx';
import { TraineeEditDialog } from '../shared/TraineeEditDialog.tsx';
import { traineeWords } from '../shared/traineeWords.ts';
import { deskState } from '../state/deskState.ts';
import { screenState } from '../state/screenState.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { sayTrainee } from '../words/sayTrainee.ts';

/** Everybody whose sets are reviewed: what is known of them, and who is off the desk. */
export function TraineesScreen() {
  const trainees = deskState((state) => state.trainees);
  const [editing, setEditing] = useState<NamedTrainee | 'new' | null>(null);
  const [panel, setPanel] = useCommandPanel();
  useEffect(() => void deskState.getState().refreshTrainees(), []);
  const here = trainees.filter(({ archived }) => !archived);
  const away = trainees.filter(({ archived }) => archived);
  return (
    <>
      <header className="screen-head">
        <button type="button" className="quiet-button" onClick={() => screenState.getState().go({ kind: 'desk' })}>
          <ArrowLeft aria-hidden="true" /> {sayDesk('title')}
        </button>
        <h1>{sayTrainee('all')}</h1>
        <span className="head-gap" />
        <button type="button" className="primary" onClick={() => setEditing('new')}>
          <UserPlus aria-hidden="true" /> {sayTrainee('add')}
        </button>
      </header>
      <main className="list-screen">
        {trainees.length === 0 && <p className="empty">{sayTrainee('noTrainees')}</p>}
        {here.length > 0 && <TraineeTable name={sayTrainee('all')} trainees={here} onEdit={setEditing} />}
        {away.length > 0 && (
          <section aria-label={sayTrainee('archived')}>
            <h2>{sayTrainee('archived')}</h2>
            <p className="soft">{sayTrainee('archivedWords')}</p>
            <TraineeTable name={sayTrainee('archived')} trainees={away} onEdit={setEditing} />
          </section>
        )}
      </main>
      <EverywhereCommands panel={panel} onPanel={setPanel} />
      {editing === 'new' && <TraineeAddDialog onClose={() => setEditing(null)} />}
      {editing !== null && editing !== 'new' && (
        <TraineeEditDialog trainee={editing} onClose={() => setEditing(null)} />
      )}
    </>
  );
}

type TraineeTableProps = {
  /** Who stands in it. */
  readonly name: string;
  readonly trainees: readonly NamedTrainee[];
  readonly onEdit: (trainee: NamedTrainee) => void;
};

function TraineeTable({ name, trainees, onEdit }: TraineeTableProps) {
  return (
    <table className="session-table trainees-table" aria-label={name}>
      <thead>
        <tr>
          <th scope="col" className="name-column">
            {sayTrainee('name')}
          </th>
          <th scope="col" className="details-column">
            {sayTrainee('details')}
          </th>
          <th scope="col">{sayTrainee('notes')}</th>
          <th scope="col" className="acts-column">
            <span className="visually-hidden">{sayTrainee('acts')}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {trainees.map((trainee) => (
          <tr key={trainee.id} data-trainee={trainee.id}>
            <th scope="row">
              <strong>{trainee.name}</strong>
            </th>
            <td>{traineeWords(trainee)}</td>
            <td className="trainee-notes" title={trainee.notes}>
              {trainee.notes}
            </td>
            <td className="end row-acts">
              <button
                type="button"
                className="quiet-button"
                aria-label={sayTrainee('openHistoryOf', { name: trainee.name })}
                onClick={() => screenState.getState().go({ kind: 'trainee', traineeId: trainee.id })}
              >
                <ChartLine aria-hidden="true" /> {sayTrainee('openHistory')}
              </button>
              <button
                type="button"
                className="quiet-button"
                aria-label={sayTrainee('editOf', { name: trainee.name })}
                onClick={() => onEdit(trainee)}
              >
                <Pencil aria-hidden="true" /> {sayTrainee('editShort')}
              </button>
              <ArchiveButton trainee={trainee} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function ArchiveButton({ trainee: { id, name, archived } }: { readonly trainee: NamedTrainee }) {
  const Icon = archived ? ArchiveRestore : Archive;
  return (
    <button
      type="button"
      className="quiet-button"
      aria-label={sayTrainee(archived ? 'bringBackOf' : 'archiveOf', { name })}
      onClick={() => void mutate('trainees.update', { traineeId: id, archived: !archived })}
    >
      <Icon aria-hidden="true" /> {sayTrainee(archived ? 'bringBack' : 'archive')}
    </button>
  );
}
