import { Trash2 } from 'lucide-react';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { clipOf } from '../../../engine/review/parts.ts';
import type { Entry, Flag } from '../../../engine/review/review.ts';
import { weights } from '../../../engine/rubric/rubric.ts';
import { capitalized } from '../../base/capitalized.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { cursorState } from '../../state/cursorState.ts';
import { removeFlag, visitFlag } from '../commands/flagging.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { momentWords } from '../model/moments.ts';
import { DraftText } from './DraftText.tsx';
import { FlagReps } from './FlagReps.tsx';

type FlagCardProps = {
  readonly flag: Flag;
  readonly entry: Entry;
  readonly exercise: Exercise | null;
  /** Criterion and set, '' where they are plain from the place. */
  readonly where: string;
};

/** One flag: everything about it can be changed where it stands. */
export function FlagCard({ flag, entry, exercise, where }: FlagCardProps) {
  const context = useReview();
  const clip = clipOf(entry, flag.clip);
  const fault = exercise?.faults.find((known) => known.id === flag.fault);
  const label = [where, flag.weight, fault?.name ?? ''].filter((part) => part !== '').join(', ');
  return (
    <article className="flag-card" aria-label={`Flag: ${label}`} data-testid="flag" data-flag={flag.id}>
      <div className="flag-head">
        <Strokes weight={flag.weight} named="elsewhere" />
        <select
          aria-label="Weight"
          className="plain-select"
          value={flag.weight}
          onChange={(event) => {
            const weight = weights.find((known) => known === event.target.value);
            if (weight !== undefined) void mutate('flags.update', { flagId: flag.id, change: { weight } });
          }}
        >
          {weights.map((weight) => (
            <option key={weight} value={weight}>
              {capitalized(weight)}
            </option>
          ))}
        </select>
        {where !== '' && <span className="soft">{where}</span>}
        {flag.weight !== 'keep' && (
          <button
            type="button"
            className="fault-button"
            aria-label={fault === undefined ? 'Name the fault' : `Fault: ${fault.name}. Change it`}
            onClick={() => cursorState.getState().nameFault(flag.id)}
          >
            {fault?.name ?? 'Name the fault'}
          </button>
        )}
        <button type="button" className="time-button" onClick={() => visitFlag(context, flag)}>
          <span className="visually-hidden">Go to </span>
          {clip === undefined ? '' : momentWords(flag.at, clip)}
        </button>
        <button
          type="button"
          className="icon-button"
          aria-label="Take away this flag"
          onClick={() => void removeFlag(context, flag, null)}
        >
          <Trash2 aria-hidden="true" />
        </button>
      </div>
      {clip !== undefined && clip.reps.length > 0 && <FlagReps flag={flag} clip={clip} />}
      <DraftText
        flagId={flag.id}
        field="note"
        label="Note"
        saved={flag.note}
        placeholder="What was seen, in your words"
      />
      <DraftText
        flagId={flag.id}
        field="cue"
        label="Cue"
        saved={flag.cue}
        placeholder={fault?.cue.outcome ?? 'What to try next time'}
      />
    </article>
  );
}
