import type { Place } from '../../../electron/contract/arranging.ts';
import { Field } from '../../base/fields.tsx';
import { day } from '../../base/figures.ts';
import { deskState } from '../../state/deskState.ts';
import { sayArranging } from '../../words/sayArranging.ts';
import type { Places } from './usePlaces.ts';

/** A session by its day, and its title where it has one. */
export const placeWords = ({ title, date }: Pick<Place, 'title' | 'date'>): string =>
  title === '' ? day(date) : sayArranging('place', { date: day(date), title });

type PlaceFieldsProps = {
  readonly places: Places;
  /** The session chosen; '' while there is none. */
  readonly sessionId: string;
  readonly onSession: (sessionId: string) => void;
};

/** Whose session, and which. Trainees who are archived are left out. */
export function PlaceFields({ places: { traineeId, choose, places }, sessionId, onSession }: PlaceFieldsProps) {
  const trainees = deskState((state) => state.trainees).filter(({ id, archived }) => !archived || id === traineeId);
  if (traineeId === null || places === null) return null;
  return (
    <>
      {trainees.length > 1 && (
        <Field label={sayArranging('trainee')}>
          <select value={traineeId} onChange={(event) => choose(event.target.value)}>
            {trainees.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </Field>
      )}
      {places.length === 0 ? (
        <p className="soft">{sayArranging('noPlaces')}</p>
      ) : (
        <Field label={sayArranging('session')}>
          <select value={sessionId} onChange={(event) => onSession(event.target.value)}>
            {places.map((place) => (
              <option key={place.sessionId} value={place.sessionId}>
                {placeWords(place)}
              </option>
            ))}
          </select>
        </Field>
      )}
    </>
  );
}
