import { useEffect, useState } from 'react';
import type { Place } from '../../../electron/contract/arranging.ts';
import { read } from '../../bridge/read.ts';
import { deskState } from '../../state/deskState.ts';

/** Trainees to choose from, and the sessions of the one chosen. */
export type Places = {
  /** null until it is known whose session this is. */
  readonly traineeId: string | null;
  readonly choose: (traineeId: string) => void;
  /** null until they have been read. */
  readonly places: readonly Place[] | null;
};

/** Where something of a session can go: at first among the sessions of its own trainee. */
export function usePlaces(sessionId: string): Places {
  const [traineeId, setTraineeId] = useState<string | null>(null);
  const [places, setPlaces] = useState<readonly Place[] | null>(null);
  useEffect(() => {
    void deskState.getState().refreshTrainees();
    let stale = false;
    void read('sessions.places', { sessionId }).then((answer) => {
      if (answer === null || stale) return;
      setTraineeId(answer.traineeId);
      setPlaces(answer.places);
    });
    return () => {
      stale = true;
    };
  }, [sessionId]);
  const choose = (chosen: string): void => {
    setTraineeId(chosen);
    setPlaces(null);
    void read('sessions.places', { sessionId, traineeId: chosen }).then((answer) => {
      if (answer !== null) setPlaces(answer.places);
    });
  };
  return { traineeId, choose, places };
}
