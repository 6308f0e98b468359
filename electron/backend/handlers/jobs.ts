import type { Handler } from './handler.ts';

export const listAllJobs: Handler<'jobs.list'> = (context) => context.jobs.list();

export const cancelJob: Handler<'jobs.cancel'> = (context, { jobId }) => {
  context.jobs.cancel(jobId);
  return {};
};

export const retryJob: Handler<'jobs.retry'> = (context, { jobId }) => {
  context.jobs.retry(jobId);
  return {};
};
