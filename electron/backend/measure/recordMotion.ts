import { Worker } from 'node:worker_threads';
import type { FrameRange } from '../../../engine/framing/section.ts';
import type { Click } from '../../../engine/recording/setUp.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { JobStep } from '../../../engine/wording/sayJob.ts';
import { type Problem, ProblemError } from '../../contract/reply.ts';
import type { LogFacts } from '../log/log.ts';
import type { UprightPicture } from '../media/probe/streams.ts';
import type { MediaTools } from '../media/tools/mediaTools.ts';
import type { RecordedParts, RecordingPart } from '../store/recordings.ts';
import type { Courtesy } from './giveWay.ts';
import { loadNativeRuntime } from './joints/nativeNetworks.ts';
import { workerAddress } from './joints/workerAddress.ts';

/** Which footage to look at, and for what. Plain data: it goes to another thread. */
export type RecordingOrder = {
  readonly tools: MediaTools;
  /** Path of the footage. */
  readonly clip: string;
  readonly table: FrameTable;
  readonly shown: UprightPicture;
  /** The frames to look at; all of them without it. */
  readonly range?: FrameRange;
  /** Frames in a second of lifting, on average. */
  readonly framesPerSecond: number;
  readonly clicks: readonly Click[];
  readonly wanted: readonly RecordingPart[];
  /** How many threads may look for joints at once. */
  readonly threads: number;
  readonly courtesy: Courtesy;
};

export type ToMeasureWorker = { readonly kind: 'cancel' };

export type FromMeasureWorker =
  /** `share`: 0-1. */
  | { readonly kind: 'progress'; readonly share: number; readonly doing: JobStep }
  /** The joints are looked for in the slower way. */
  | { readonly kind: 'slower'; readonly reason: LogFacts }
  | { readonly kind: 'done'; readonly parts: RecordedParts }
  | { readonly kind: 'failed'; readonly problem: Problem };

/** How long a worker may take to stop by itself before it is ended. */
const stopWithinMs = 30_000;

export type RecordingWork = {
  readonly signal: AbortSignal;
  /** `share`: 0-1. */
  readonly onProgress: (share: number, step: JobStep) => void;
  /** Is told why, when the joints have to be looked for in the slower way. */
  readonly onSlower?: (reason: LogFacts) => void;
};

/**
 * Records the wanted parts of footage in a thread of its own, so that the backend keeps answering. Frames are decoded once
 * for the disc and the joints together, so an interrupted recording starts over. When this settles, the thread and those it
 * started have ended. Throws `cancelled`, or the problem that stopped it.
 */
export async function recordMotion(order: RecordingOrder, work: RecordingWork): Promise<RecordedParts> {
  if (order.wanted.length === 0) return {};
  if (work.signal.aborted) throw cancelledRecording();
  if (order.wanted.includes('joints')) loadInMainThread();
  const worker = new Worker(workerAddress('measureWorker', import.meta.url), { workerData: order });
  try {
    return await answerOf(worker, work);
  } finally {
    await worker.terminate();
  }
}

/** The threads find out for themselves when the library can't be loaded, and say so. */
function loadInMainThread(): void {
  try {
    loadNativeRuntime();
  } catch {
    // They go the slower way.
  }
}

function answerOf(worker: Worker, { signal, onProgress, onSlower }: RecordingWork): Promise<RecordedParts> {
  return new Promise((resolve, reject) => {
    let timer: NodeJS.Timeout | undefined;
    const stop = () => {
      worker.postMessage({ kind: 'cancel' } satisfies ToMeasureWorker);
      timer = setTimeout(() => reject(cancelledRecording()), stopWithinMs);
    };
    const settle = (done: () => void) => {
      clearTimeout(timer);
      signal.removeEventListener('abort', stop);
      done();
    };
    const fail = (error: Error) => settle(() => reject(signal.aborted ? cancelledRecording() : error));
    signal.addEventListener('abort', stop, { once: true });
    worker.on('message', (message: FromMeasureWorker) => {
      switch (message.kind) {
        case 'progress':
          return onProgress(message.share, message.doing);
        case 'slower':
          return onSlower?.(message.reason);
        case 'done':
          return settle(() => resolve(message.parts));
        case 'failed':
          return fail(ProblemError.of(message.problem));
      }
    });
    worker.on('error', fail);
    worker.on('exit', () => fail(new Error('The measuring thread ended without an answer.')));
  });
}

function cancelledRecording(): ProblemError {
  return new ProblemError('cancelled', 'measuringCancelled');
}
