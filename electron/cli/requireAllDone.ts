import { ProblemError } from '../contract/reply.ts';
import type { Job } from '../contract/requests.ts';

/** Throws one sentence when any of the jobs failed: the first reason, and how many others there are. */
export function requireAllDone(jobs: readonly Job[]): void {
  const [first, ...others] = jobs.filter(({ state }) => state !== 'done');
  if (first === undefined) return;
  const more = others.length === 0 ? '' : ` (and ${others.length} more of ${jobs.length} jobs did not end well)`;
  throw new ProblemError('internal', `${first.message.replace(/\.$/, '')}${more}.`);
}
