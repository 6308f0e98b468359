import { plainReps } from '../../../engine/review/parts.ts';
import type { Clip, Flag } from '../../../engine/review/review.ts';
import { mutate } from '../../bridge/mutate.ts';

/** Which reps a flag speaks of: the whole set, or any of them. */
export function FlagReps({ flag, clip }: { readonly flag: Flag; readonly clip: Clip }) {
  const chosen: readonly number[] = flag.reps === 'set' ? [] : flag.reps;
  const toggle = (rep: number): void => {
    const next = chosen.includes(rep) ? chosen.filter((known) => known !== rep) : [...chosen, rep];
    void mutate('flags.update', { flagId: flag.id, change: { reps: next.length === 0 ? 'set' : plainReps(next) } });
  };
  return (
    <fieldset className="flag-reps" aria-label="Reps of this flag">
      <button
        type="button"
        className="chip"
        aria-pressed={flag.reps === 'set'}
        onClick={() => void mutate('flags.update', { flagId: flag.id, change: { reps: 'set' } })}
      >
        Set
      </button>
      {clip.reps.map((rep) => (
        <button
          key={rep.index}
          type="button"
          className="chip"
          aria-label={`Rep ${rep.index}`}
          aria-pressed={chosen.includes(rep.index)}
          onClick={() => toggle(rep.index)}
        >
          {rep.index}
        </button>
      ))}
    </fieldset>
  );
}
