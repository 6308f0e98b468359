import { useState } from 'react';
import type { SessionSummary } from '../../../electron/contract/desk.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { Field } from '../../base/fields.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { sayArranging } from '../../words/sayArranging.ts';
import { placeWords } from './PlaceFields.tsx';
import { usePlaces } from './usePlaces.ts';

type MergeSessionDialogProps = { readonly session: SessionSummary; readonly onClose: () => void };

/** Into which other session of the same day this one goes. */
export function MergeSessionDialog({ session, onClose }: MergeSessionDialogProps) {
  const { places } = usePlaces(session.id);
  const alike = places?.filter(({ sessionId, date }) => sessionId !== session.id && date === session.date);
  const [chosen, setChosen] = useState('');
  const into = alike?.find(({ sessionId }) => sessionId === chosen) ?? alike?.[0];
  const merge = async (): Promise<void> => {
    if (into === undefined) return;
    if ((await mutate('sessions.merge', { sessionId: session.id, into: into.sessionId })) !== null) onClose();
  };
  return (
    <FormDialog
      title={sayArranging('mergeSession')}
      doing={sayArranging('merge')}
      ready={into === undefined ? 'waiting' : 'ready'}
      onDone={merge}
      onClose={onClose}
    >
      {alike?.length === 0 && <p className="soft">{sayArranging('nothingToMerge')}</p>}
      {into !== undefined && (
        <>
          <p className="soft">{sayArranging('mergeWords')}</p>
          <Field label={sayArranging('mergeInto')}>
            <select value={into.sessionId} onChange={(event) => setChosen(event.target.value)}>
              {alike?.map((place) => (
                <option key={place.sessionId} value={place.sessionId}>
                  {placeWords(place)}
                </option>
              ))}
            </select>
          </Field>
        </>
      )}
    </FormDialog>
  );
}
