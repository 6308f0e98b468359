import { useState } from 'react';
import type { SessionSummary } from '../../../electron/contract/desk.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { Field } from '../../base/fields.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { deskState } from '../../state/deskState.ts';
import { sayArranging } from '../../words/sayArranging.ts';

type MoveSessionDialogProps = { readonly session: SessionSummary; readonly onClose: () => void };

/** Whose session it really was. */
export function MoveSessionDialog({ session, onClose }: MoveSessionDialogProps) {
  const others = deskState((state) => state.trainees).filter(
    ({ id, archived }) => !archived && id !== session.traineeId,
  );
  const [chosen, setChosen] = useState('');
  const traineeId = others.find(({ id }) => id === chosen)?.id ?? others[0]?.id;
  const move = async (): Promise<void> => {
    if (traineeId === undefined) return;
    if ((await mutate('sessions.move', { sessionId: session.id, traineeId })) !== null) onClose();
  };
  return (
    <FormDialog
      title={sayArranging('moveSession')}
      doing={sayArranging('move')}
      ready={traineeId === undefined ? 'waiting' : 'ready'}
      onDone={move}
      onClose={onClose}
    >
      {others.length === 0 ? (
        <p className="soft">{sayArranging('noTrainee')}</p>
      ) : (
        <Field label={sayArranging('trainee')}>
          <select value={traineeId} onChange={(event) => setChosen(event.target.value)}>
            {others.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </Field>
      )}
      <p className="soft">{sayArranging('sentStay')}</p>
    </FormDialog>
  );
}
