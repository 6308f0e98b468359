import { useState } from 'react';
import { localDay } from '../../electron/contract/localDay.ts';
import { nameModeSchema } from '../../electron/contract/shapes.ts';
import type { Trainee } from '../../electron/contract/trainees.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { Field } from '../base/fields.tsx';
import { mutate } from '../bridge/mutate.ts';
import { NameModeOptions } from '../shared/NamesField.tsx';
import { type TraineeFacts, TraineeFields, usualFacts } from '../shared/TraineeFields.tsx';
import { useMyName, useMyself } from '../state/mine.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { sayTrainee } from '../words/sayTrainee.ts';

/** Who lifts, and what for. Whoever reviews their own sets is not asked again for a name they gave. */
export function TraineeAddDialog({ onClose }: { readonly onClose: () => void }) {
  const myName = useMyName();
  const [name, setName] = useState('');
  const [facts, setFacts] = useState<TraineeFacts>(usualFacts);
  const [names, setNames] = useState<NameMode>('full');
  const add = async (): Promise<void> => {
    const { equipment, ...known } = facts;
    const added = await mutate('trainees.add', {
      name: myName ?? name,
      ...known,
      ...(equipment !== null && { equipment }),
      names,
    });
    if (added !== null) onClose();
  };
  return (
    <FormDialog title={sayDesk('addTraineeTitle')} doing={sayDesk('saveTrainee')} onDone={add} onClose={onClose}>
      {myName === null && (
        <Field label={sayDesk('name')}>
          <input type="text" required maxLength={200} value={name} onChange={(e) => setName(e.target.value)} />
        </Field>
      )}
      <TraineeFields facts={facts} onChange={(change) => setFacts({ ...facts, ...change })} />
      <Field label={sayTrainee('nameShown')}>
        <select
          value={names}
          onChange={(e) => setNames(nameModeSchema.options.find((mode) => mode === e.target.value) ?? 'full')}
        >
          <NameModeOptions />
        </select>
      </Field>
    </FormDialog>
  );
}

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
