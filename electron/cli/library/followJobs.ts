import { sayJob } from '../../../engine/wording/sayJob.ts';
import type { Job } from '../../contract/jobs.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Host } from '../run/host.ts';
import { cancelledError } from '../run/outcome.ts';
import type { OpenLibrary } from './openLibrary.ts';

const ended: ReadonlySet<Job['state']> = new Set(['done', 'failed', 'cancelled']);

/**
 * Waits until the jobs that `start` queues have ended, and the jobs that follow from them, and shows their progress.
 * Gives each job as it ended. After Ctrl-C it cancels them all, then throws `cancelled`.
 */
export async function followJobs(
  host: Host,
  library: OpenLibrary,
  start: () => Promise<unknown>,
): Promise<readonly Job[]> {
  const jobs = new Map<string, Job>();
  const earlier = new Set<string>();
  const cancelled = new Set<string>();
  let wake = () => {};
  const stopListening = library.onEvent((event) => {
    if (event.name !== 'jobChanged' || earlier.has(event.data.job.id)) return;
    jobs.set(event.data.job.id, event.data.job);
    wake();
  });
  const onAbort = () => wake();
  host.signal.addEventListener('abort', onAbort);
  try {
    for (const { id } of await libraryJobs(library)) earlier.add(id);
    await start();
    // Every job told of itself when it was queued, one that follows from another before that other ended.
    const allEnded = () => [...jobs.values()].every(({ state }) => ended.has(state));
    while (!allEnded()) {
      show(host, [...jobs.values()]);
      if (host.signal.aborted) await cancelJobs(library, [...jobs.values()], cancelled);
      if (allEnded()) break;
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
    }
    if (host.signal.aborted) throw cancelledError();
    return [...jobs.values()];
  } finally {
    stopListening();
    host.signal.removeEventListener('abort', onAbort);
    host.progress.clear();
  }
}

/** Cancels each job that has not ended, once: a job left in line would run when the library is next opened. */
async function cancelJobs(library: OpenLibrary, jobs: readonly Job[], cancelled: Set<string>): Promise<void> {
  for (const { id, state } of jobs) {
    if (ended.has(state) || cancelled.has(id)) continue;
    cancelled.add(id);
    await library.tidyUp('jobs.cancel', { jobId: id });
  }
}

/** The jobs of a library; none where there is no library yet. */
async function libraryJobs(library: OpenLibrary): Promise<readonly Job[]> {
  const state = await library.ask('library.state', {});
  return state.kind === 'open' ? library.ask('jobs.list', {}) : [];
}

function show(host: Host, jobs: readonly Job[]): void {
  const current = jobs.find(({ state }) => state === 'running') ?? jobs.find(({ state }) => !ended.has(state));
  if (current === undefined) return;
  const done = jobs.reduce((sum, job) => sum + (ended.has(job.state) ? 1 : (job.progress ?? 0)), 0);
  host.progress.show(
    done / jobs.length,
    [current.title, current.message].flatMap((part) => (part === null ? [] : [sayJob(part, 'en')])).join(': '),
  );
}

/** Throws one sentence when any of the jobs failed: the first reason, and how many others there are. */
export function requireAllDone(jobs: readonly Job[]): void {
  const [first, ...others] = jobs.filter(({ state }) => state !== 'done');
  if (first === undefined) return;
  const why = sayJob(first.message ?? first.title, 'en');
  const more = others.length === 0 ? '' : ` (and ${others.length} more of ${jobs.length} jobs failed)`;
  throw ProblemError.inWords('internal', `${why.replace(/\.$/, '')}${more}.`);
}
