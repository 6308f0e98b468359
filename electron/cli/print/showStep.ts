import { type JobStep, sayJob } from '../../../engine/wording/sayJob.ts';
import type { Host } from '../run/host.ts';

/** Shows how far work is, and what it is doing, on the bar of a command. */
export const showStep =
  (host: Host) =>
  (share: number, step: JobStep): void =>
    host.progress.show(share, sayJob(step, 'en'));
