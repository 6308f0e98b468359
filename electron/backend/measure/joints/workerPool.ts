import { Piscina } from 'piscina';
import { ProblemError } from '../../../contract/reply.ts';
import { openPatience } from './patience.ts';
import type { Look, Seen } from './perceive.ts';
import type { Looked, ThreadOrder } from './threadWork.ts';
import { workerAddress } from './workerAddress.ts';

/** Threads that look at pictures, each at one at a time; further looks wait for the next free one. */
export type WorkerPool = {
  /**
   * Whom a picture shows, whose bytes go to the thread and can't be used here any more. Throws a problem when the
   * networks can't be loaded or used, or when the pool is closed.
   */
  readonly look: (look: Look) => Promise<Seen>;
  /** Ends the threads, once the looks that are under way are done. */
  readonly close: () => Promise<void>;
};

/**
 * Starts `count` threads; each readies its networks before its first look. Those that give way to a window are replaced by
 * ordinary ones when so much else runs on the machine that they hardly get on.
 */
export function openWorkerPool(count: number, order: ThreadOrder): WorkerPool {
  let threads = openThreads(count, order);
  let patience = order.courtesy === 'window' ? openPatience() : null;
  const ending: Promise<void>[] = [];
  let isClosed = false;
  return {
    look: async (look) => {
      if (isClosed) throw jointsFailed(new Error('the threads are ended'));
      const startedMs = performance.now();
      const { seen, workedMs } = await threads.look(look);
      if (!isClosed && patience?.isOver({ tookMs: performance.now() - startedMs, workedMs })) {
        patience = null;
        ending.push(threads.close());
        threads = openThreads(count, { ...order, courtesy: 'nobody' });
      }
      return seen;
    },
    close: async () => {
      isClosed = true;
      await Promise.all([...ending, threads.close()]);
    },
  };
}

function openThreads(count: number, order: ThreadOrder) {
  const threads = new Piscina<Look, Looked>({
    filename: workerAddress('jointWorker', import.meta.url).href,
    name: 'look',
    minThreads: count,
    maxThreads: count,
    workerData: order,
  });
  const underWay = new Set<Promise<Looked>>();
  let failure: ProblemError | null = null;
  // A thread that fails between two looks; those that wait for it end with the pool.
  threads.on('error', (error: Error) => {
    failure ??= jointsFailed(error);
  });
  return {
    look: async (look: Look): Promise<Looked> => {
      if (failure !== null) throw failure;
      const found = threads.run(look, { transferList: [look.bytes.buffer] });
      underWay.add(found);
      try {
        return await found;
      } catch (error) {
        throw jointsFailed(error);
      } finally {
        underWay.delete(found);
      }
    },
    close: async (): Promise<void> => {
      // A thread that is ended while its network runs natively takes the whole process with it.
      await Promise.allSettled(underWay);
      await threads.destroy();
    },
  };
}

function jointsFailed(cause: unknown): ProblemError {
  return new ProblemError('internal', 'jointsUnavailable', {}, { cause });
}
