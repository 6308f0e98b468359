import { useState } from 'react';
import { localDay } from '../../electron/contract/localDay.ts';
import { nameModeSchema } from '../../electron/contract/shapes.ts';
import type { Trainee } from '../../electron/contract/trainees.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { Field } from '../base/fields.tsx';
import { mutate } from '../bridge/mutate.ts';
import { NameModeOptions } from '../shared/NamesField.tsx';
import { type TraineeFacts, TraineeFields } from '../shared/TraineeFields.tsx';

const usualFacts: TraineeFacts = {
  goal: 'growth',
  experience: 'experienced',
  units: 'kg',
  minor: false,
  equipment: null,
};

/** Who lifts, and what for. */
export function TraineeAddDialog({ onClose }: { readonly onClose: () => void }) {
  const [name, setName] = useState('');
  const [facts, setFacts] = useState<TraineeFacts>(usualFacts);
  const [names, setNames] = useState<NameMode>('full');
  const add = async (): Promise<void> => {
    const { equipment, ...known } = facts;
    const added = await mutate('trainees.add', { name, ...known, ...(equipment !== null && { equipment }), names });
    if (added !== null) onClose();
  };
  return (
    <FormDialog title="Add a trainee" doing="Add trainee" onDone={add} onClose={onClose}>
      <Field label="Name">
        <input type="text" required maxLength={200} value={name} onChange={(e) => setName(e.target.value)} />
      </Field>
      <TraineeFields facts={facts} onChange={(change) => setFacts({ ...facts, ...change })} />
      <Field label="Named in what leaves the desk">
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
