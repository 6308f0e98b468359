import type { RepMeasurement } from '../../../engine/motion/measurement.ts';
import { sayDoubts, sayNotCounted } from '../../../engine/wording/sayOffered.ts';
import { clipClockOfSeconds } from '../../player/clipClock.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';
import { addOfferedRep, goToSeconds } from '../commands/measuring.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';

/** Movements that may be reps and were not counted, why not, and a button that counts each. */
export function OfferedReps({ offered }: { readonly offered: readonly RepMeasurement[] }) {
  const context = useReview();
  if (offered.length === 0) return null;
  const { language } = deskLanguage.getState();
  const { stage } = context;
  if (stage === null || stage.tables === null) return null;
  const { clip, tables } = stage;
  const clockOf = (seconds: number): string => clipClockOfSeconds(clip, tables.table, seconds);
  const heading = sayNotCounted(offered.length, language);
  return (
    <section className="offered-reps" aria-label={heading}>
      <h2>{heading}</h2>
      <ul>
        {offered.map((rep) => {
          const span = { from: clockOf(rep.startS), to: clockOf(rep.endS) };
          return (
            <li key={rep.index}>
              <button type="button" className="quiet-button" onClick={() => goToSeconds(context, rep.startS)}>
                {sayMeasures('span', span)}
              </button>
              <span className="soft">{sayDoubts(rep, language)}</span>
              <button
                type="button"
                aria-label={sayMeasures('countNamed', span)}
                onClick={() => void addOfferedRep(context, rep.index)}
              >
                {sayMeasures('count')}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
