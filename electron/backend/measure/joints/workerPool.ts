import { Worker } from 'node:worker_threads';
import type { Body } from '../../../../engine/recording/recording.ts';
import { ProblemError } from '../../../contract/reply.ts';
import type { Order, Report } from './messages.ts';
import type { Look } from './perceive.ts';
import { workerAddress } from './workerAddress.ts';

type Waiting = {
  readonly look: Look;
  readonly resolve: (body: Body | null) => void;
  readonly reject: (error: Error) => void;
};

/** Worker threads that look at pictures, each at one at a time; orders wait for the next free one. */
export type WorkerPool = {
  /** The lifter in a picture. The picture's bytes go to the worker and can't be used here any more. */
  readonly look: (look: Look) => Promise<Body | null>;
  readonly close: () => Promise<void>;
};

/** Starts the threads and waits until every one has its networks. Throws a problem when they can't be loaded. */
export async function startWorkers(count: number): Promise<WorkerPool> {
  const queue: Waiting[] = [];
  const idle: Worker[] = [];
  const busy = new Map<Worker, Waiting>();
  let failure: ProblemError | null = null;
  const workers = Array.from({ length: count }, () => new Worker(workerAddress('jointWorker', import.meta.url)));

  const fail = (reason: string) => {
    failure ??= jointsFailed(reason);
    for (const waiting of [...busy.values(), ...queue.splice(0)]) waiting.reject(failure);
    busy.clear();
  };
  const give = () => {
    while (queue.length > 0) {
      const worker = idle.pop();
      if (worker === undefined) return;
      const waiting = queue.shift();
      if (waiting === undefined) return;
      busy.set(worker, waiting);
      const order: Order = waiting.look;
      worker.postMessage(order, [waiting.look.bytes.buffer]);
    }
  };
  const hear = (worker: Worker, report: Report) => {
    if (report.kind === 'failed') return fail(report.reason);
    if (report.kind === 'body') busy.get(worker)?.resolve(report.body);
    busy.delete(worker);
    idle.push(worker);
    give();
  };
  const close = async () => {
    fail('closed');
    await Promise.all(workers.map((worker) => worker.terminate()));
  };

  const ready = workers.map(
    (worker) =>
      new Promise<void>((resolve, reject) => {
        worker.on('message', (report: Report) => {
          if (report.kind === 'failed') reject(jointsFailed(report.reason));
          hear(worker, report);
          resolve();
        });
        worker.on('error', (error) => {
          reject(jointsFailed(error.message));
          fail(error.message);
        });
      }),
  );
  try {
    await Promise.all(ready);
  } catch (error) {
    await close();
    throw error;
  }
  return {
    look: (look) =>
      new Promise((resolve, reject) => {
        if (failure !== null) return reject(failure);
        queue.push({ look, resolve, reject });
        give();
      }),
    close,
  };
}

function jointsFailed(reason: string): ProblemError {
  return new ProblemError(
    'internal',
    'The lifter’s joints could not be looked for on this machine; the clip and its other measures are as they were: install the app again, or measure without joints.',
    { cause: new Error(reason) },
  );
}
