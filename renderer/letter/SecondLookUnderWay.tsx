import { EyeOff } from 'lucide-react';
import { screenState } from '../state/screenState.ts';

/** Says that this judgement is better not read while it is judged again blind, and leads there. */
export function SecondLookUnderWay({ lookId }: { readonly lookId: string }) {
  return (
    <section className="second-look-notice" aria-label="Second look under way">
      <p>
        <EyeOff aria-hidden="true" /> <strong>A second look at this session is under way.</strong> It is better not to
        read this judgement until that one is finished.
      </p>
      <button type="button" onClick={() => screenState.getState().go({ kind: 'review', sessionId: lookId })}>
        Go on with the second look
      </button>
    </section>
  );
}
