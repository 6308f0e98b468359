import type { Params, ReadName, Result } from '../../electron/contract/requests.ts';
import { sayProblem } from '../words/sayProblem.ts';
import { rackside } from './rackside.ts';
import { statusState } from './statusState.ts';

/** Asks for something that changes nothing; null when it failed, and the status line says why. */
export async function read<N extends ReadName>(name: N, params: Params<N>): Promise<Result<N> | null> {
  const reply = await rackside().ask(name, params);
  const status = statusState.getState();
  if (reply.ok) {
    status.readWell();
    return reply.value;
  }
  status.tell(sayProblem(reply.problem), 'read');
  return null;
}
