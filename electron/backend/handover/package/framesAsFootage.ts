import { rm } from 'node:fs/promises';
import { frameAtUs, frameStartUs } from '../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import { ProblemError } from '../../../contract/reply.ts';
import { hashFile } from '../../files/hashing.ts';
import { probeClip } from '../../media/probe/probeClip.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import type { PlayedClip } from './playedReview.ts';

/**
 * A copy of footage as a clip to play, frame for frame. Throws `bad-media`, and removes the copy, when it has other frames
 * than the footage.
 */
export async function framesAsFootage(
  tools: MediaTools,
  copy: string,
  { footage, name, signal }: { readonly footage: FrameTable; readonly name: string; readonly signal: AbortSignal },
): Promise<{ readonly table: FrameTable; readonly played: PlayedClip }> {
  const { table, facts } = await probeClip(tools, copy, { signal });
  if (table.ticks.length !== footage.ticks.length) {
    await rm(copy, { force: true });
    throw new ProblemError('bad-media', 'originalLostFrames', { clip: name });
  }
  const played: PlayedClip = {
    facts: { ...facts, sha256: await hashFile(copy) },
    footage,
    timeOf: (us) => frameStartUs(table, frameAtUs(footage, Math.round(us))),
    remarks: new Map(),
    clockUs: null,
  };
  return { table, played };
}
