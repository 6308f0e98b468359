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

export const dismissJobs: Handler<'jobs.dismiss'> = (context, { jobIds }) => {
  for (const jobId of jobIds) context.jobs.dismiss(jobId);
  return {};
};

export const getLine: Handler<'jobs.line'> = (context) => context.jobs.line();

export const moveJob: Handler<'jobs.move'> = (context, { jobId, to }) => {
  context.jobs.move(jobId, to);
  return {};
};
