import { mkdir, rm } from 'node:fs/promises';
import path from 'node:path';
import type { Context } from '../context/context.ts';
import type { TaskOf } from '../context/tasks.ts';
import { openHandover } from '../handover/receive/openHandover.ts';
import type { JobRow } from '../store/jobs.ts';
import { importReview } from './importReview.ts';
import type { JobTools } from './queue.ts';

/** Imports another desk's handover as a read-only session, whole or not at all. */
export async function importHandover(
  context: Context,
  job: JobRow,
  tools: JobTools,
  { path: packagePath, sessionId }: TaskOf<'takeHandover'>,
): Promise<void> {
  const unpacked = path.join(context.library().folder.handovers, `.unfinished-${job.id}`);
  const received = await openHandover(packagePath, context);
  try {
    await rm(unpacked, { recursive: true, force: true });
    await mkdir(unpacked);
    tools.report(null, 'Unpacking');
    const file = await received.unpack(unpacked, tools.signal);
    await importReview(context, job, tools, { file, sessionId, speaks: 'file', readOnly: true });
  } finally {
    received.close();
    await rm(unpacked, { recursive: true, force: true });
  }
}
