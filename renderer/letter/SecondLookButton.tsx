import { Eye } from 'lucide-react';
import { mutate } from '../bridge/mutate.ts';
import { screenState } from '../state/screenState.ts';

type SecondLookButtonProps = {
  readonly sessionId: string;
  /** The second look that was finished last; null without one. */
  readonly finishedId: string | null;
};

/** Starts judging the same clips again with nothing of this judgement to be seen; leads to the figures of the last time. */
export function SecondLookButton({ sessionId, finishedId }: SecondLookButtonProps) {
  const start = async (): Promise<void> => {
    const started = await mutate('secondLook.start', { sessionId });
    if (started !== null) screenState.getState().go({ kind: 'review', sessionId: started.sessionId });
  };
  return (
    <section className="second-look" aria-label="Second look">
      <h2>Would you judge it the same again?</h2>
      <p className="soft">A second look shows the same clips with nothing judged. Best some days later.</p>
      <button type="button" onClick={() => void start()}>
        <Eye aria-hidden="true" /> Second look
      </button>
      {finishedId !== null && (
        <button
          type="button"
          onClick={() => screenState.getState().go({ kind: 'agreement', firstId: sessionId, secondId: finishedId })}
        >
          Compare with the last one
        </button>
      )}
    </section>
  );
}
