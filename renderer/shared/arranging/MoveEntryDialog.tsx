import { useState } from 'react';
import type { Entry } from '../../../engine/review/review.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { sayArranging } from '../../words/sayArranging.ts';
import { PlaceFields } from './PlaceFields.tsx';
import { usePlaces } from './usePlaces.ts';

type MoveEntryDialogProps = { readonly entry: Entry; readonly sessionId: string; readonly onClose: () => void };

/** Which session an exercise goes to with its clips. */
export function MoveEntryDialog({ entry, sessionId, onClose }: MoveEntryDialogProps) {
  const all = usePlaces(sessionId);
  const places = { ...all, places: all.places?.filter((one) => one.sessionId !== sessionId) ?? null };
  const [chosen, setChosen] = useState('');
  const place = places.places?.find((one) => one.sessionId === chosen) ?? places.places?.[0];
  const move = async (): Promise<void> => {
    if (place === undefined) return;
    if ((await mutate('entries.move', { entryId: entry.id, sessionId: place.sessionId })) !== null) onClose();
  };
  return (
    <FormDialog
      title={sayArranging('moveEntry')}
      doing={sayArranging('move')}
      ready={place === undefined ? 'waiting' : 'ready'}
      onDone={move}
      onClose={onClose}
    >
      <PlaceFields places={places} sessionId={place?.sessionId ?? ''} onSession={setChosen} />
    </FormDialog>
  );
}
