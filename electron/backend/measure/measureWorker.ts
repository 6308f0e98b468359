import { parentPort, workerData } from 'node:worker_threads';
import type { JobStep } from '../../../engine/wording/sayJob.ts';
import { problemOf } from '../context/problems.ts';
import type { LogFacts } from '../log/log.ts';
import { lowerPriority } from './giveWay.ts';
import type { FromMeasureWorker, RecordingOrder, ToMeasureWorker } from './recordMotion.ts';
import { recordParts } from './recordParts.ts';

const post = (message: FromMeasureWorker) => parentPort?.postMessage(message);
const order: RecordingOrder = workerData;
const cancelling = new AbortController();
parentPort?.on('message', (message: ToMeasureWorker) => {
  if (message.kind === 'cancel') cancelling.abort();
});

lowerPriority();
try {
  const onProgress = (share: number, doing: JobStep) => post({ kind: 'progress', share, doing });
  const onSlower = (reason: LogFacts) => post({ kind: 'slower', reason });
  post({ kind: 'done', parts: await recordParts(order, { signal: cancelling.signal, onProgress, onSlower }) });
} catch (error) {
  post({ kind: 'failed', problem: problemOf(error, 'measuring') });
}
