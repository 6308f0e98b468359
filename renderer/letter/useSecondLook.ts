import { useEffect, useState } from 'react';
import type { Result } from '../../electron/contract/requests.ts';
import { read } from '../bridge/read.ts';

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
