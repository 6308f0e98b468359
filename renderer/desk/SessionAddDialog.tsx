import { useState } from 'react';
import { localDay } from '../../electron/contract/localDay.ts';
import type { Trainee } from '../../electron/contract/trainees.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { Field } from '../base/fields.tsx';
import { mutate } from '../bridge/mutate.ts';

type SessionAddDialogProps = { readonly trainees: readonly Trainee[]; readonly onClose: () => void };

/** A day's work of one trainee. */
export function SessionAddDialog({ trainees, onClose }: SessionAddDialogProps) {
  const [traineeId, setTraineeId] = useState(trainees[0]?.id ?? '');
  const [title, setTitle] = useState('');
  const [date, setDate] = useState(() => localDay(new Date()));
  const add = async (): Promise<void> => {
    if ((await mutate('sessions.add', { traineeId, title, date })) !== null) onClose();
  };
  return (
    <FormDialog title="Add a session" doing="Add session" onDone={add} onClose={onClose}>
      <Field label="Trainee">
        <select required value={traineeId} onChange={(e) => setTraineeId(e.target.value)}>
          {trainees.map((trainee) => (
            <option key={trainee.id} value={trainee.id}>
              {trainee.name}
            </option>
          ))}
        </select>
      </Field>
      <Field label="Date">
        <input type="date" required value={date} onChange={(e) => setDate(e.target.value)} />
      </Field>
      <Field label="Title">
        <input
          type="text"
          maxLength={200}
          placeholder="Lower body, week 3"
          value={title}
          onChange={(e) => setTitle(e.target.value)}
        />
      </Field>
    </FormDialog>
  );
}
