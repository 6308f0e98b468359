import os from 'node:os';
import { recordMotion } from '../../../electron/backend/measure/recordMotion.ts';
import type { ClipProbe } from '../../../electron/backend/media/probe/probeClip.ts';
import type { MediaTools } from '../../../electron/backend/media/tools/mediaTools.ts';
import type { RecordedParts, RecordingPart } from '../../../electron/backend/store/recordings.ts';

/** Looks at a clip for the wanted parts, without any click. */
export function recordFile(
  tools: MediaTools,
  file: string,
  { table, shown, meanFps, realTimeFactor }: ClipProbe,
  wanted: readonly RecordingPart[],
): Promise<RecordedParts> {
  const order = {
    ...{ tools, clip: file, table, shown, framesPerSecond: meanFps * realTimeFactor, clicks: [], wanted },
    threads: Math.max(1, os.availableParallelism() - 1),
    courtesy: 'nobody' as const,
  };
  return recordMotion(order, { signal: new AbortController().signal, onProgress: () => undefined });
}
