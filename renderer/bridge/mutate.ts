import type { ActName, Params, Result } from '../../electron/contract/requests.ts';
import { sayProblem } from '../words/sayProblem.ts';
import { rackside } from './rackside.ts';
import { statusState } from './statusState.ts';

/**
 * Asks for something that changes the library. The status line says "Saving" until the backend has answered that it is
 * in the database; null when it failed, and the status line says why.
 */
export async function mutate<N extends ActName>(name: N, params: Params<N>): Promise<Result<N> | null> {
  const status = statusState.getState();
  status.saveBegan();
  const reply = await rackside().ask(name, params);
  if (reply.ok) {
    status.saveEnded('saved');
    return reply.value;
  }
  status.saveEnded('failed');
  status.tell(sayProblem(reply.problem), 'save');
  return null;
}
