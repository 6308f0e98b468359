import { Piscina } from 'piscina';
import type { Body } from '../../../../engine/recording/recording.ts';
import { ProblemError } from '../../../contract/reply.ts';
import type { Look } from './perceive.ts';
import { workerAddress } from './workerAddress.ts';

/** Threads that look at pictures, each at one at a time; further looks wait for the next free one. */
export type WorkerPool = {
  /**
   * The lifter in a picture, whose bytes go to the thread and can't be used here any more. Throws a problem when the
   * networks can't be loaded or used.
   */
  readonly look: (look: Look) => Promise<Body | null>;
  readonly close: () => Promise<void>;
};

/** Starts `count` threads; each loads its networks before its first look. */
export function openWorkerPool(count: number): WorkerPool {
  const threads = new Piscina<Look, Body | null>({
    filename: workerAddress('jointWorker', import.meta.url).href,
    name: 'look',
    minThreads: count,
    maxThreads: count,
  });
  let failure: ProblemError | null = null;
  // A thread that fails between two looks; those that wait for it end with the pool.
  threads.on('error', (error: Error) => {
    failure ??= jointsFailed(error);
  });
  return {
    look: async (look) => {
      if (failure !== null) throw failure;
      return threads.run(look, { transferList: [look.bytes.buffer] }).catch((error: unknown) => {
        throw jointsFailed(error);
      });
    },
    close: () => threads.destroy(),
  };
}

function jointsFailed(cause: unknown): ProblemError {
  return new ProblemError(
    'internal',
    'The lifter’s joints could not be looked for on this machine; the clip and its other measures are as they were: install the app again, or measure without joints.',
    { cause },
  );
}
