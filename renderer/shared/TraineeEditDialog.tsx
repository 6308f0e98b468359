import { useState } from 'react';
import type { Trainee } from '../../electron/contract/trainees.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { mutate } from '../bridge/mutate.ts';
import { sayParts } from '../words/sayParts.ts';
import { sayTrainee } from '../words/sayTrainee.ts';
import { TraineeFields } from './TraineeFields.tsx';

type TraineeEditDialogProps = {
  readonly trainee: Trainee;
  /** Called once the change is saved. */
  readonly onSaved?: () => void;
  readonly onClose: () => void;
};

/** Changes what is known of a trainee; their sessions are judged anew by it. */
export function TraineeEditDialog({ trainee, onSaved, onClose }: TraineeEditDialogProps) {
  const { name, goal, experience, units, minor, equipment = null } = trainee;
  const [facts, setFacts] = useState({ goal, experience, units, minor, equipment });
  const save = async (): Promise<void> => {
    if ((await mutate('trainees.update', { traineeId: trainee.id, ...facts })) === null) return;
    onSaved?.();
    onClose();
  };
  return (
    <FormDialog title={sayTrainee('editTitle', { name })} doing={sayParts('save')} onDone={save} onClose={onClose}>
      <TraineeFields facts={facts} onChange={(change) => setFacts({ ...facts, ...change })} />
    </FormDialog>
  );
}
