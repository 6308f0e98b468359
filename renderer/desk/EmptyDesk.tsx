import { mutate } from '../bridge/mutate.ts';
import { useIsSelfReview } from '../state/mine.ts';
import { sayDesk } from '../words/sayDesk.ts';

type EmptyDeskProps = { readonly trainees: number; readonly onTrainee: () => void; readonly onSession: () => void };

/** The first steps, while there is nothing to review. */
export function EmptyDesk({ trainees, onTrainee, onSession }: EmptyDeskProps) {
  const self = useIsSelfReview();
  // Whoever reviews their own sets is on the desk from the start, and may still say more of themselves.
  const first = trainees === 0 || self;
  return (
    <div className="empty-desk">
      <h2>{sayDesk('nothingYet')}</h2>
      <ol>
        <li>
          {first ? sayDesk('whoTrains') : sayDesk('traineeAdded', { count: trainees })}{' '}
          <button type="button" className={trainees === 0 ? 'primary' : undefined} onClick={onTrainee}>
            {sayDesk(first ? 'addFirstTrainee' : 'addNextTrainee')}
          </button>
        </li>
        <li>
          {sayDesk('firstSession')}{' '}
          {trainees > 0 && (
            <button type="button" className="primary" onClick={onSession}>
              {sayDesk('addFirstSession')}
            </button>
          )}
        </li>
        <li>{sayDesk('dropHere')}</li>
        <li>{sayDesk('openIt')}</li>
      </ol>
      <p>
        {sayDesk('lookAround')}{' '}
        <button type="button" onClick={() => void mutate('library.addDemo', {})}>
          {sayDesk('addDemo')}
        </button>
      </p>
    </div>
  );
}
