import { useState } from 'react';
import { nameModeSchema } from '../../electron/contract/shapes.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { Field } from '../base/fields.tsx';
import { mutate } from '../bridge/mutate.ts';
import { deskState } from '../state/deskState.ts';
import { useMyName } from '../state/mine.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { sayTrainee } from '../words/sayTrainee.ts';
import { NameModeOptions } from './NamesField.tsx';
import { type TraineeFacts, TraineeFields, TraineeNotesField, usualFacts } from './TraineeFields.tsx';

type TraineeAddDialogProps = {
  readonly onClose: () => void;
  /** What comes once the trainee is there; without it the dialog closes. */
  readonly onAdded?: (() => void) | undefined;
};

/** Who lifts, and what for. Whoever reviews their own sets is not asked again for a name they gave. */
export function TraineeAddDialog({ onClose, onAdded = onClose }: TraineeAddDialogProps) {
  const myName = useMyName();
  const [name, setName] = useState('');
  const [facts, setFacts] = useState<TraineeFacts>(usualFacts);
  const [names, setNames] = useState<NameMode>('full');
  const [notes, setNotes] = useState('');
  const add = async (): Promise<void> => {
    const { equipment, ...known } = facts;
    const added = await mutate('trainees.add', {
      name: myName ?? name,
      ...known,
      ...(equipment !== null && { equipment }),
      names,
      notes,
    });
    if (added === null) return;
    await deskState.getState().refresh();
    onAdded();
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
      <TraineeNotesField notes={notes} onChange={setNotes} />
    </FormDialog>
  );
}
