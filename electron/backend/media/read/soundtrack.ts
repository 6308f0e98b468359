import { type FileHandle, open } from 'node:fs/promises';
import { frameStartUs } from '../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import type { MediaTools } from '../tools/mediaTools.ts';
import { fileAddress, safeInputOptions } from '../tools/safeInput.ts';
import { decodedFrames } from './decodedFrames.ts';

/** How a soundtrack file holds its samples. */
export const soundtrackFormat = { format: 's16le', sampleRate: 48_000, channels: 2 } as const;

/** A stretch of a soundtrack: the clip's own sound from a media time on, or silence; as long as `lastsUs`. */
export type SoundPiece = { readonly lastsUs: number; readonly fromUs: number | null };

const sampleBytes = 2 * soundtrackFormat.channels;
/** Read at a time; what is left over at the end, a hundredth of a second at most, is silent. */
const readSamples = 480;
const blockSamples = 9_600;
const silence = new Uint8Array(blockSamples * sampleBytes);

/**
 * Writes a soundtrack from pieces of a clip's sound, whose media times rise, and silences; raw samples, for
 * `encodeVideo`. Sound that ends early goes on as silence. Throws `cancelled`, or the error of a file that can't be written.
 */
export async function makeSoundtrack(
  tools: MediaTools,
  clip: string,
  output: string,
  {
    table,
    pieces,
    signal,
  }: {
    readonly table: FrameTable;
    readonly pieces: readonly SoundPiece[];
    readonly signal?: AbortSignal | undefined;
  },
): Promise<void> {
  const zeroUs = frameStartUs(table, 0);
  const file = await open(output, 'w');
  const sound = soundFrom(tools, clip, zeroUs, signal);
  try {
    let endUs = 0;
    let written = 0;
    for (const { lastsUs, fromUs } of pieces) {
      endUs += lastsUs;
      const count = samplesIn(endUs) - written;
      if (fromUs === null) await writeSilence(file, count);
      else await sound.copy(file, samplesIn(fromUs - zeroUs), count);
      written += count;
    }
  } finally {
    await sound.stop();
    await file.close();
  }
}

const samplesIn = (us: number): number => Math.round((us * soundtrackFormat.sampleRate) / 1_000_000);

/** A clip's samples by their number since the first frame; asked for in rising order. */
function soundFrom(tools: MediaTools, clip: string, zeroUs: number, signal: AbortSignal | undefined) {
  const { sampleRate, channels, format } = soundtrackFormat;
  const blocks = decodedFrames(tools, {
    args: [
      ...['-hide_banner', '-v', 'error', '-nostdin', ...safeInputOptions, '-copyts', '-i', fileAddress(clip)],
      ...['-map', '0:a:0', '-vn', '-sn', '-dn', '-ac', String(channels)],
      // Gaps become silence, and the first sample is that of the first frame.
      ...['-af', `aresample=${sampleRate}:async=1:first_pts=${samplesIn(zeroUs)}`],
      ...['-f', format, 'pipe:1'],
    ],
    frameBytes: sampleBytes * readSamples,
    signal,
  });
  let block = new Uint8Array(0);
  let blockStart = 0;
  let ended = false;
  const copy = async (file: FileHandle, from: number, count: number) => {
    let next = from;
    const end = from + count;
    while (next < end && !ended) {
      const blockEnd = blockStart + block.length / sampleBytes;
      if (next < blockEnd) {
        const upTo = Math.min(end, blockEnd);
        await file.write(block.slice((next - blockStart) * sampleBytes, (upTo - blockStart) * sampleBytes));
        next = upTo;
        continue;
      }
      const read = await blocks.next();
      ended = read.done === true;
      blockStart = blockEnd;
      block = read.done === true ? new Uint8Array(0) : new Uint8Array(read.value);
    }
    await writeSilence(file, end - next);
  };
  return { copy, stop: () => blocks.return(null) };
}

async function writeSilence(file: FileHandle, samples: number): Promise<void> {
  for (let left = samples; left > 0; left -= blockSamples) {
    await file.write(silence.subarray(0, Math.min(left, blockSamples) * sampleBytes));
  }
}
