import { Eye, EyeOff } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { Result } from '../../electron/contract/requests.ts';
import { mutate } from '../bridge/mutate.ts';
import { read } from '../bridge/read.ts';
import { screenState } from '../state/screenState.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayLetter } from '../words/sayLetter.ts';

/** The second look at a session, read when its screen opens; null without one. */
export function useSecondLook(sessionId: string): Result<'secondLook.get'>['look'] {
  const [look, setLook] = useState<Result<'secondLook.get'>['look']>(null);
  useEffect(() => {
    let stale = false;
    void read('secondLook.get', { sessionId }).then((answer) => {
      if (!stale) setLook(answer?.look ?? null);
    });
    return () => {
      stale = true;
    };
  }, [sessionId]);
  return look;
}

type SecondLookButtonProps = {
  readonly sessionId: string;
  /** The second look that was finished last; null without one. */
  readonly finishedId: string | null;
};

/** Starts judging the same clips again with nothing of this judgement to be seen; leads to the figures of the last time. */
export function SecondLookButton({ sessionId, finishedId }: SecondLookButtonProps) {
  const start = async (): Promise<void> => {
    const started = await mutate('secondLook.start', { sessionId, language: deskLanguage.getState().language });
    if (started !== null) screenState.getState().go({ kind: 'review', sessionId: started.sessionId });
  };
  return (
    <section className="second-look" aria-label={sayLetter('secondLook')}>
      <h2>{sayLetter('secondLookTitle')}</h2>
      <p className="soft">{sayLetter('secondLookWords')}</p>
      <button type="button" onClick={() => void start()}>
        <Eye aria-hidden="true" /> {sayLetter('secondLook')}
      </button>
      {finishedId !== null && (
        <button
          type="button"
          onClick={() => screenState.getState().go({ kind: 'agreement', firstId: sessionId, secondId: finishedId })}
        >
          {sayLetter('compareLooks')}
        </button>
      )}
    </section>
  );
}

/** Says that this judgement is better not read while it is judged again blind, and leads there. */
export function SecondLookUnderWay({ lookId }: { readonly lookId: string }) {
  return (
    <section className="second-look-notice" aria-label={sayLetter('lookUnderWay')}>
      <p>
        <EyeOff aria-hidden="true" /> <strong>{sayLetter('lookUnderWayWords')}</strong> {sayLetter('doNotRead')}
      </p>
      <button type="button" onClick={() => screenState.getState().go({ kind: 'review', sessionId: lookId })}>
        {sayLetter('continueLook')}
      </button>
    </section>
  );
}
