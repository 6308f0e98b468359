import path from 'node:path';
import * as v from 'valibot';
import type { Context } from '../context/context.ts';
import { taskSchema } from '../context/tasks.ts';
import type { JobRow } from '../store/jobs.ts';
import { handOver } from './handOver.ts';
import { importClip } from './importClip.ts';
import { importHandover, importReview } from './importReview.ts';
import { makeFootageProxy } from './makeFootageProxy.ts';
import { measureClip } from './measureClip.ts';
import type { TaskTools } from './queue.ts';
import { readArrivals } from './readArrivals.ts';
import { renderNarration } from './renderNarration.ts';

/** Does a job's task. What it adds to the library comes in one transaction at its end, together with its being done. */
export async function runJob(context: Context, job: JobRow, tools: TaskTools): Promise<void> {
  const task = v.parse(taskSchema, JSON.parse(job.task));
  switch (task.do) {
    case 'demo': {
      const folder = path.join(context.settings.appFolder, 'seeds', 'demo');
      const session = {
        file: path.join(folder, 'session.json'),
        sessionId: task.sessionId,
        speaks: 'library',
        footageOutside: 'any',
      } as const;
      const { earlierId } = task;
      const earlier =
        earlierId === undefined ? [] : [{ ...session, file: path.join(folder, 'earlier.json'), sessionId: earlierId }];
      return importReview(context, job, tools, session, earlier);
    }
    case 'review':
      return importReview(context, job, tools, {
        file: task.path,
        sessionId: task.sessionId,
        speaks: 'file',
        footageOutside: task.footageOutside,
      });
    case 'clip':
      return importClip(context, job, tools, task);
    case 'arrive':
      return readArrivals(context, job, tools, task);
    case 'proxy':
      return makeFootageProxy(context, job, tools, task);
    case 'measure':
      return measureClip(context, job, tools, task);
    case 'handover':
      return handOver(context, job, tools, task);
    case 'narration':
      return renderNarration(context, job, tools, task);
    case 'takeHandover':
      return importHandover(context, job, tools, task);
  }
}
