import { useCallback, useEffect, useState } from 'react';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import type { Result } from '../../electron/contract/requests.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { read } from '../bridge/read.ts';
import { deskState } from '../state/deskState.ts';

/** A session with places that may hold its trainee's hidden name. */
export type HeldSession = Result<'names.doubts'>[number];

type NameDoubts = { readonly held: readonly HeldSession[]; readonly readAgain: () => Promise<void> };

/**
 * What has to be decided before the chosen sessions can be handed over: read anew whenever they, their trainees or what goes along
 * change. Nothing is asked where every name is shown in full.
 */
export function useNameDoubts(
  chosen: readonly SessionSummary[],
  names: NameMode | null,
  narrated: boolean,
): NameDoubts {
  const trainees = deskState((state) => state.trainees);
  const sessions = deskState((state) => state.sessions);
  const [held, setHeld] = useState<readonly HeldSession[]>([]);
  const hidden = chosen.filter(
    ({ traineeId }) => (names ?? trainees.find(({ id }) => id === traineeId)?.names ?? 'full') !== 'full',
  );
  const ids = hidden.map(({ id }) => id).join(' ');
  const readAgain = useCallback(async () => {
    if (ids === '') return setHeld([]);
    const sessionIds = ids.split(' ').slice(0, mostAtOnce);
    const found = await read('names.doubts', { sessionIds, narrated, ...(names !== null && { names }) });
    if (found !== null) setHeld(found);
  }, [ids, narrated, names]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the desk knows of them tells that something was changed.
  useEffect(() => {
    void readAgain();
  }, [readAgain, trainees, sessions]);
  return { held: ids === '' ? [] : held, readAgain };
}

const mostAtOnce = 500;
