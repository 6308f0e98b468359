import os from 'node:os';
import { parentPort, workerData } from 'node:worker_threads';
import { problemOf } from '../context/problems.ts';
import type { LogFacts } from '../log/log.ts';
import type { FromMeasureWorker, RecordingOrder, ToMeasureWorker } from './recordMotion.ts';
import { recordParts } from './recordParts.ts';

/** Only Linux takes a priority for one thread; elsewhere it would slow the requests as well. */
function lowerPriority(): void {
  if (process.platform !== 'linux') return;
  try {
    os.setPriority(0, os.constants.priority.PRIORITY_BELOW_NORMAL);
  } catch {
    // Some machines forbid it; the work is the same.
  }
}

const post = (message: FromMeasureWorker) => parentPort?.postMessage(message);
const order: RecordingOrder = workerData;
const cancelling = new AbortController();
parentPort?.on('message', (message: ToMeasureWorker) => {
  if (message.kind === 'cancel') cancelling.abort();
});

lowerPriority();
try {
  const onProgress = (share: number, message: string) => post({ kind: 'progress', share, message });
  const onSlower = (reason: LogFacts) => post({ kind: 'slower', reason });
  post({ kind: 'done', parts: await recordParts(order, { signal: cancelling.signal, onProgress, onSlower }) });
} catch (error) {
  post({ kind: 'failed', problem: problemOf(error, 'measuring') });
}
