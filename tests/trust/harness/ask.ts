import type { Job } from '../../../electron/contract/jobs.ts';
import type { Reply } from '../../../electron/contract/reply.ts';
import type { Params, RequestName, Result } from '../../../electron/contract/requests.ts';
import { sayProblem } from '../../../engine/wording/sayProblem.ts';

/** Whatever answers requests: a backend of this process, or one in a process of its own. */
export type Asked = {
  readonly ask: <N extends RequestName>(name: N, params: Params<N>) => Promise<Reply<Result<N>>>;
};

/** The answer to a request that has to succeed. */
export async function ask<N extends RequestName>(asked: Asked, name: N, params: Params<N>): Promise<Result<N>> {
  const reply = await asked.ask(name, params);
  if (reply.ok) return reply.value;
  throw new Error(`${name} was refused (${reply.problem.code}): ${sayProblem(reply.problem.message, 'en')}`);
}

const isOpen = ({ state }: Job): boolean => state === 'waiting' || state === 'running';

/** All jobs, once none of them waits or runs any more, or so much time has passed. */
export async function jobsAtRest(asked: Asked, mostMs = Number.POSITIVE_INFINITY): Promise<readonly Job[]> {
  const since = performance.now();
  for (;;) {
    const jobs = await ask(asked, 'jobs.list', {});
    if (!jobs.some(isOpen) || performance.now() - since > mostMs) return jobs;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
