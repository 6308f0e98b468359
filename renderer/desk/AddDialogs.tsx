import { useState } from 'react';
import { localDay } from '../../electron/contract/localDay.ts';
import type { Trainee } from '../../electron/contract/trainees.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { Field } from '../base/fields.tsx';
import { mutate } from '../bridge/mutate.ts';
import { useMyself } from '../state/mine.ts';
import { sayDesk } from '../words/sayDesk.ts';

type SessionAddDialogProps = { readonly trainees: readonly Trainee[]; readonly onClose: () => void };

/** A day's work of one trainee. */
export function SessionAddDialog({ trainees, onClose }: SessionAddDialogProps) {
  const myself = useMyself();
  const [traineeId, setTraineeId] = useState(myself?.id ?? trainees[0]?.id ?? '');
  const [title, setTitle] = useState('');
  const [date, setDate] = useState(() => localDay(new Date()));
  const add = async (): Promise<void> => {
    if ((await mutate('sessions.add', { traineeId, title, date })) !== null) onClose();
  };
  return (
    <FormDialog title={sayDesk('addSessionTitle')} doing={sayDesk('addSession')} onDone={add} onClose={onClose}>
      {(myself === null || trainees.length > 1) && (
        <Field label={sayDesk('whoTrained')}>
          <select required value={traineeId} onChange={(e) => setTraineeId(e.target.value)}>
            {trainees.map((trainee) => (
              <option key={trainee.id} value={trainee.id}>
                {trainee.name}
              </option>
            ))}
          </select>
        </Field>
      )}
      <Field label={sayDesk('date')}>
        <input type="date" required value={date} onChange={(e) => setDate(e.target.value)} />
      </Field>
      <Field label={sayDesk('sessionTitle')}>
        <input
          type="text"
          maxLength={200}
          placeholder={sayDesk('titleExample')}
          value={title}
          onChange={(e) => setTitle(e.target.value)}
        />
      </Field>
    </FormDialog>
  );
}

/** A session is somebody's: without a trainee it offers to add one first. */
export function NoTraineeDialog({ onAdd, onClose }: { readonly onAdd: () => void; readonly onClose: () => void }) {
  return (
    <FormDialog
      title={sayDesk('addSessionTitle')}
      doing={sayDesk('addFirstTrainee')}
      onDone={async () => onAdd()}
      onClose={onClose}
    >
      <p>{sayDesk('noTraineeYet')}</p>
    </FormDialog>
  );
}
