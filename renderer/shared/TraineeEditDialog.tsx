import { useState } from 'react';
import type { NamedTrainee } from '../../electron/contract/trainees.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { Field } from '../base/fields.tsx';
import { mutate } from '../bridge/mutate.ts';
import { sayParts } from '../words/sayParts.ts';
import { sayTrainee } from '../words/sayTrainee.ts';
import { TraineeFields, TraineeNotesField } from './TraineeFields.tsx';

type TraineeEditDialogProps = {
  readonly trainee: NamedTrainee;
  /** Called once the change is saved. */
  readonly onSaved?: () => void;
  readonly onClose: () => void;
};

/** Changes what is known of a trainee; their sessions are judged anew by it. Letters that were sent keep the old name. */
export function TraineeEditDialog({ trainee, onSaved, onClose }: TraineeEditDialogProps) {
  const { goal, experience, units, minor, equipment = null } = trainee;
  const [name, setName] = useState(trainee.name);
  const [facts, setFacts] = useState({ goal, experience, units, minor, equipment });
  const [notes, setNotes] = useState(trainee.notes);
  const save = async (): Promise<void> => {
    if ((await mutate('trainees.update', { traineeId: trainee.id, name, ...facts, notes })) === null) return;
    onSaved?.();
    onClose();
  };
  return (
    <FormDialog
      title={sayTrainee('editTitle', { name: trainee.name })}
      doing={sayParts('save')}
      onDone={save}
      onClose={onClose}
    >
      <Field label={sayTrainee('name')}>
        <input type="text" required maxLength={200} value={name} onChange={(event) => setName(event.target.value)} />
      </Field>
      <TraineeFields facts={facts} onChange={(change) => setFacts({ ...facts, ...change })} />
      <TraineeNotesField notes={notes} onChange={setNotes} />
    </FormDialog>
  );
}
