import type { Sound } from '../../../../engine/cameras/alignSounds.ts';
import { frameStartUs } from '../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import type { MediaTools } from '../tools/mediaTools.ts';
import { fileAddress, safeInputOptions } from '../tools/safeInput.ts';
import { decodedFrames } from './decodedFrames.ts';

/** Enough for plates, feet and voices. */
const rateHz = 8000;
const sampleBytes = 2;
const blockSamples = 800;
/** A set is shorter; what comes later adds nothing to where it lies. */
const longestS = 180;

/**
 * A clip's sound in one channel, from its first frame on; no samples for a clip without sound. What can't be decoded ends
 * it. Throws `cancelled`.
 */
export async function readMonoSound(tools: MediaTools, clip: string, table: FrameTable): Promise<Sound> {
  const firstSample = Math.round((frameStartUs(table, 0) * rateHz) / 1_000_000);
  const blocks = decodedFrames(tools, {
    args: [
      ...['-hide_banner', '-v', 'error', '-nostdin', ...safeInputOptions, '-copyts', '-i', fileAddress(clip)],
      ...['-map', '0:a:0?', '-vn', '-sn', '-dn', '-ac', '1', '-t', String(longestS)],
      ...['-af', `aresample=${rateHz}:async=1:first_pts=${firstSample}`, '-f', 's16le', 'pipe:1'],
    ],
    frameBytes: sampleBytes * blockSamples,
  });
  const read: Float32Array[] = [];
  for await (const block of blocks) {
    const view = new DataView(block.buffer, block.byteOffset, block.byteLength);
    read.push(Float32Array.from({ length: blockSamples }, (_, at) => view.getInt16(at * sampleBytes, true) / 32_768));
  }
  const samples = new Float32Array(read.length * blockSamples);
  read.forEach((block, place) => {
    samples.set(block, place * blockSamples);
  });
  return { samples, rateHz };
}
