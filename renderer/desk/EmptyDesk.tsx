import { mutate } from '../bridge/mutate.ts';

type EmptyDeskProps = { readonly trainees: number; readonly onTrainee: () => void; readonly onSession: () => void };

/** The first steps, while there is nothing to review. */
export function EmptyDesk({ trainees, onTrainee, onSession }: EmptyDeskProps) {
  return (
    <div className="empty-desk">
      <h2>Nothing to review yet</h2>
      <ol>
        <li>
          {trainees > 0 ? 'A trainee is there.' : 'Add the person whose lifts you review; for your own, that is you.'}{' '}
          {trainees === 0 && (
            <button type="button" className="primary" onClick={onTrainee}>
              Add the first trainee
            </button>
          )}
        </li>
        <li>
          Add a session: one day of training.{' '}
          {trainees > 0 && (
            <button type="button" className="primary" onClick={onSession}>
              Add the first session
            </button>
          )}
        </li>
        <li>
          Drop clips on it, one clip a set, from any phone. They are copied into your library and stay on this machine.
        </li>
        <li>Open it: play, mark the reps, judge them on the card, and write the letter.</li>
      </ol>
      <p>
        To look round first, add the sample: an invented trainee’s session, judged, with its letter.{' '}
        <button type="button" onClick={() => void mutate('library.addDemo', {})}>
          Add the sample session
        </button>
      </p>
    </div>
  );
}
