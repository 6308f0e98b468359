import { rm } from 'node:fs/promises';
import { type FrameRange, nearestIn } from '../../../../engine/framing/section.ts';
import { frameAtUs, frameStartUs } from '../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import { ProblemError } from '../../../contract/reply.ts';
import { hashFile } from '../../files/hashing.ts';
import { probeClip } from '../../media/probe/probeClip.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import type { PlayedClip } from './playedReview.ts';

/**
 * A copy of some frames of footage as a clip to play. Throws `bad-media`, and removes the copy, when it has other frames
 * than the footage.
 */
export async function framesAsFootage(
  tools: MediaTools,
  copy: string,
  {
    footage,
    range,
    name,
    signal,
  }: {
    readonly footage: FrameTable;
    readonly range: FrameRange;
    readonly name: string;
    readonly signal: AbortSignal;
  },
): Promise<{ readonly table: FrameTable; readonly played: PlayedClip }> {
  const { table, facts } = await probeClip(tools, copy, { signal });
  if (table.ticks.length !== range.lastFrame - range.firstFrame + 1) {
    await rm(copy, { force: true });
    throw new ProblemError('bad-media', 'originalLostFrames', { clip: name });
  }
  const played: PlayedClip = {
    facts: { ...facts, sha256: await hashFile(copy) },
    ...{ footage, range },
    timeOf: (us) => frameStartUs(table, nearestIn(range, frameAtUs(footage, Math.round(us))) - range.firstFrame),
    remarks: new Map(),
    clockUs: null,
  };
  return { table, played };
}
