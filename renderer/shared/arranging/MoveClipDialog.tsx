import { useState } from 'react';
import type { Params } from '../../../electron/contract/requests.ts';
import type { Clip, Entry } from '../../../engine/review/review.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { Field } from '../../base/fields.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { catalogueState } from '../../state/catalogueState.ts';
import { sayArranging } from '../../words/sayArranging.ts';
import { leaveClip } from './leaveClip.ts';
import { PlaceFields } from './PlaceFields.tsx';
import { usePlaces } from './usePlaces.ts';

type MoveClipDialogProps = {
  readonly clip: Clip;
  readonly entry: Entry;
  readonly sessionId: string;
  readonly onClose: () => void;
};

/** Which session a clip goes to, and into which exercise there; into its own exercise, made when missing, unless chosen. */
export function MoveClipDialog({ clip, entry, sessionId, onClose }: MoveClipDialogProps) {
  const places = usePlaces(sessionId);
  const catalogue = catalogueState((state) => state.catalogue);
  const [chosen, setChosen] = useState(sessionId);
  const [entryId, setEntryId] = useState('');
  const place = places.places?.find((one) => one.sessionId === chosen) ?? places.places?.[0];
  const others = place?.entries.filter((one) => one.entryId !== entry.id && one.exercise !== entry.exercise) ?? [];
  const nameOf = (id: string): string => catalogue?.exercises.find((known) => known.id === id)?.name ?? id;
  const move = async (): Promise<void> => {
    if (place === undefined) return;
    const to: Params<'clips.move'>['to'] =
      entryId === '' ? { kind: 'session', sessionId: place.sessionId } : { kind: 'entry', entryId };
    const leave = leaveClip(clip.id);
    if ((await mutate('clips.move', { clipId: clip.id, to })) === null) return;
    if (place.sessionId !== sessionId) leave();
    onClose();
  };
  return (
    <FormDialog
      title={sayArranging('moveClip')}
      doing={sayArranging('move')}
      ready={place === undefined ? 'waiting' : 'ready'}
      onDone={move}
      onClose={onClose}
    >
      <PlaceFields
        places={places}
        sessionId={place?.sessionId ?? ''}
        onSession={(id) => {
          setChosen(id);
          setEntryId('');
        }}
      />
      {place !== undefined && (
        <Field label={sayArranging('exercise')}>
          <select value={entryId} onChange={(event) => setEntryId(event.target.value)}>
            <option value="">{sayArranging('asItIs', { exercise: nameOf(entry.exercise) })}</option>
            {others.map((one) => (
              <option key={one.entryId} value={one.entryId}>
                {nameOf(one.exercise)}
              </option>
            ))}
          </select>
        </Field>
      )}
    </FormDialog>
  );
}
