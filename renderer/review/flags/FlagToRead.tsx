import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { clipOf } from '../../../engine/review/parts.ts';
import type { Entry, Flag } from '../../../engine/review/review.ts';
import { capitalized } from '../../base/capitalized.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { visitFlag } from '../commands/flagging.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { momentWords } from '../model/moments.ts';

type FlagToReadProps = {
  readonly flag: Flag;
  readonly entry: Entry;
  readonly exercise: Exercise | null;
  /** Criterion and set, '' where they are plain from the place. */
  readonly where: string;
};

const repWords = (reps: Flag['reps']): string =>
  reps === 'set' ? 'whole set' : `${reps.length === 1 ? 'rep' : 'reps'} ${reps.join(', ')}`;

/** A flag of a received session: read-only, with a button to go to its moment. */
export function FlagToRead({ flag, entry, exercise, where }: FlagToReadProps) {
  const context = useReview();
  const clip = clipOf(entry, flag.clip);
  const fault = exercise?.faults.find((known) => known.id === flag.fault);
  const words = [capitalized(flag.weight), where, fault?.name ?? '', repWords(flag.reps)];
  return (
    <article className="flag-card" data-testid="flag" data-flag={flag.id}>
      <div className="flag-head">
        <Strokes weight={flag.weight} named="elsewhere" />
        <span>{words.filter((part) => part !== '').join(', ')}</span>
        <button type="button" className="time-button" onClick={() => visitFlag(context, flag)}>
          <span className="visually-hidden">Go to </span>
          {clip === undefined ? '' : momentWords(flag.at, clip)}
        </button>
      </div>
      {flag.note !== '' && <p>{flag.note}</p>}
      {flag.cue !== '' && (
        <p>
          <span className="soft">Cue:</span> {flag.cue}
        </p>
      )}
    </article>
  );
}
