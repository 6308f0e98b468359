import { Trash2 } from 'lucide-react';
import { useEffect, useId } from 'react';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { clipOf, plainReps } from '../../../engine/review/parts.ts';
import type { Clip, Entry, Flag } from '../../../engine/review/review.ts';
import { severities } from '../../../engine/rubric/rubric.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { type DraftField, draftKey, draftsState, saveDrafts, typeDraft } from '../../drafts/drafts.ts';
import { cursorState } from '../../state/cursorState.ts';
import { sayFlags } from '../../words/sayFlags.ts';
import { saySeverity } from '../../words/saySeverity.ts';
import { removeFlag, visitFlag } from '../commands/flagging.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { momentWords } from '../model/moments.ts';
import { FlagMoment } from './FlagMoment.tsx';

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
  const label = [where, saySeverity(flag.severity ?? 'note'), fault?.name ?? '']
    .filter((part) => part !== '')
    .join(', ');
  return (
    <article
      className="flag-card"
      aria-label={sayFlags('flag', { what: label })}
      data-testid="flag"
      data-flag={flag.id}
    >
      <div className="flag-head">
        <Strokes severity={flag.severity} named="elsewhere" />
        <select
          aria-label={sayFlags('severity')}
          className="plain-select"
          value={flag.severity ?? 'note'}
          onChange={(event) => {
            const severity = severities.find((known) => known === event.target.value) ?? null;
            void mutate('flags.update', { flagId: flag.id, change: { severity } });
          }}
        >
          {([...severities, 'note'] as const).map((severity) => (
            <option key={severity} value={severity}>
              {saySeverity(`${severity}Title`)}
            </option>
          ))}
        </select>
        {where !== '' && <span className="soft">{where}</span>}
        {flag.severity !== 'keep' && flag.severity !== null && (
          <button
            type="button"
            className="fault-button"
            aria-label={fault === undefined ? sayFlags('nameFault') : sayFlags('changeFault', { fault: fault.name })}
            onClick={() => cursorState.getState().nameFault(flag.id)}
          >
            {fault?.name ?? sayFlags('nameFault')}
          </button>
        )}
        <button type="button" className="time-button" onClick={() => visitFlag(context, flag)}>
          <span className="visually-hidden">{sayFlags('goTo')} </span>
          {clip === undefined ? '' : momentWords(flag.at, clip)}
        </button>
        <button
          type="button"
          className="icon-button"
          aria-label={sayFlags('removeFlag')}
          onClick={() => void removeFlag(context, flag, null)}
        >
          <Trash2 aria-hidden="true" />
        </button>
      </div>
      <div className="flag-places">
        {clip !== undefined && clip.reps.length > 0 && <FlagReps flag={flag} clip={clip} />}
        {clip !== undefined && <FlagMoment flag={flag} clip={clip} />}
      </div>
      <DraftText
        flagId={flag.id}
        field="note"
        label={sayFlags('note')}
        saved={flag.note}
        placeholder={sayFlags('notePlaceholder')}
      />
      <DraftText
        flagId={flag.id}
        field="cue"
        label={sayFlags('cue')}
        saved={flag.cue}
        placeholder={fault?.cue.outcome ?? sayFlags('cuePlaceholder')}
      />
    </article>
  );
}

/** Which reps a flag speaks of: the whole set, or any of them. */
function FlagReps({ flag, clip }: { readonly flag: Flag; readonly clip: Clip }) {
  const chosen: readonly number[] = flag.reps === 'set' ? [] : flag.reps;
  const toggle = (rep: number): void => {
    const next = chosen.includes(rep) ? chosen.filter((known) => known !== rep) : [...chosen, rep];
    void mutate('flags.update', { flagId: flag.id, change: { reps: next.length === 0 ? 'set' : plainReps(next) } });
  };
  return (
    <fieldset className="flag-reps" aria-label={sayFlags('repsOfFlag')}>
      <button
        type="button"
        className="chip"
        aria-pressed={flag.reps === 'set'}
        onClick={() => void mutate('flags.update', { flagId: flag.id, change: { reps: 'set' } })}
      >
        {sayFlags('set')}
      </button>
      {clip.reps.map((rep) => (
        <button
          key={rep.index}
          type="button"
          className="chip"
          aria-label={sayFlags('rep', { rep: rep.index })}
          aria-pressed={chosen.includes(rep.index)}
          onClick={() => toggle(rep.index)}
        >
          {rep.index}
        </button>
      ))}
    </fieldset>
  );
}

type DraftTextProps = {
  readonly flagId: string;
  readonly field: DraftField;
  readonly label: string;
  readonly saved: string;
  readonly placeholder: string;
};

/** A text edited in place: saved after a short rest, on leaving it, and when it goes off screen. */
function DraftText({ flagId, field, label, saved, placeholder }: DraftTextProps) {
  const draft = draftsState((state) => state.drafts[draftKey(flagId, field)]);
  const { typing } = useReview();
  const labelId = useId();
  useEffect(() => () => void saveDrafts(), []);
  return (
    <div className="draft-text">
      <span id={labelId} className="draft-label">
        {label}
      </span>
      <textarea
        id={`${field}-${flagId}`}
        aria-labelledby={labelId}
        rows={1}
        maxLength={2000}
        value={draft ?? saved}
        placeholder={placeholder}
        onChange={(event) => typeDraft(flagId, field, event.target.value)}
        onFocus={(event) => {
          const kept = field === 'note' ? typing.release() : '';
          if (kept === '') return;
          typeDraft(flagId, field, `${draft ?? saved}${kept}`);
          event.currentTarget.setSelectionRange(event.currentTarget.value.length, event.currentTarget.value.length);
        }}
        onBlur={() => void saveDrafts()}
        onKeyDown={(event) => {
          if (event.key === 'Escape') event.currentTarget.blur();
        }}
      />
    </div>
  );
}
