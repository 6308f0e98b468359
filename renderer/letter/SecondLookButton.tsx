import { Eye } from 'lucide-react';
import { act } from '../bridge/act.ts';
import { screenState } from '../state/screenState.ts';

/** Starts judging the same clips again with nothing of this judgement to be seen. */
export function SecondLookButton({ sessionId }: { readonly sessionId: string }) {
  const start = async (): Promise<void> => {
    const started = await act('secondLook.start', { sessionId });
    if (started !== null) screenState.getState().go({ kind: 'review', sessionId: started.sessionId });
  };
  return (
    <section className="second-look" aria-label="Second look">
      <h2>Would you judge it the same again?</h2>
      <p className="soft">A second look shows the same clips with nothing judged. Best some days later.</p>
      <button type="button" onClick={() => void start()}>
        <Eye aria-hidden="true" /> Second look
      </button>
    </section>
  );
}
