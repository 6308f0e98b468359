import type { App } from './app.ts';
import { until } from './until.ts';

/** What the slowest job may take on a busy machine. */
export const longestMs = 180_000;

/** Waits until a job has ended well; fails with its own words when it ended otherwise. */
export async function finishedJob(app: App, jobId: string): Promise<void> {
  const job = await until(
    `job ${jobId} to end`,
    async () => {
      const jobs = await app.ask('jobs.list', {});
      const found = jobs.find((candidate) => candidate.id === jobId);
      return found !== undefined && found.state !== 'waiting' && found.state !== 'running' ? found : null;
    },
    longestMs,
  );
  if (job.state !== 'done') throw new Error(`${job.title}: ${job.state}: ${job.message}`);
}
