import type { RepMeasurement } from '../../../engine/motion/measurement.ts';
import { formatClock } from '../../../engine/time/writtenTime.ts';
import { sayDoubts, sayNotCounted } from '../../../engine/wording/sayOffered.ts';
import { addOfferedRep, goToSeconds } from '../commands/measuring.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';

const clock = (seconds: number): string => formatClock(Math.round(seconds * 1_000_000));

/** Movements that may be reps and were not counted, why not, and a button that counts each. */
export function OfferedReps({ offered }: { readonly offered: readonly RepMeasurement[] }) {
  const context = useReview();
  if (offered.length === 0) return null;
  return (
    <section className="offered-reps" aria-label={sayNotCounted(offered.length, 'en')}>
      <h2>{sayNotCounted(offered.length, 'en')}</h2>
      <ul>
        {offered.map((rep) => {
          const span = `${clock(rep.startS)} to ${clock(rep.endS)}`;
          return (
            <li key={rep.index}>
              <button type="button" className="quiet-button" onClick={() => goToSeconds(context, rep.startS)}>
                {span}
              </button>
              <span className="soft">{sayDoubts(rep, 'en')}</span>
              <button
                type="button"
                aria-label={`Count the movement from ${span} as a rep`}
                onClick={() => void addOfferedRep(context, rep.index)}
              >
                Count it
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
