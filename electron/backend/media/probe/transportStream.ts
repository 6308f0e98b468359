import { mkdtemp, open, rm } from 'node:fs/promises';
import path from 'node:path';
import type { MediaTools } from '../tools/mediaTools.ts';
import { cancelledWork } from '../tools/refuse.ts';
import { runFfprobe } from '../tools/runFfprobe.ts';
import { fileAddress, safeInputOptions } from '../tools/safeInput.ts';
import { runTool } from '../tools/startTool.ts';
import type { Packet } from './frameTimes.ts';
import { findFootage, type ProbedHeader, type ProbedStream, readHeader } from './streams.ts';

/** What ffprobe would say of a file, found without it. */
export type FoundStream = {
  readonly header: ProbedHeader;
  readonly stream: ProbedStream;
  readonly packets: readonly Packet[];
};

const syncByte = 0x47;
/** Length of a packet, and where its sync byte stands: MPEG-TS (ISO/IEC 13818-1) and that of cameras, with a time before each. */
const layouts = [
  { length: 188, sync: 0 },
  { length: 192, sync: 4 },
] as const;

/** Whether a file begins like an MPEG transport stream. */
export async function isTransportStream(file: string): Promise<boolean> {
  const handle = await open(file);
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(1024), 0, 1024, 0);
    return layouts.some(({ length, sync }) =>
      [0, 1, 2].every((packet) => {
        const at = packet * length + sync;
        return at < bytesRead && buffer[at] === syncByte;
      }),
    );
  } finally {
    await handle.close();
  }
}

/**
 * Reads a transport stream with ffmpeg alone: the bundled ffprobe of 2018 crashes on all of them. Null where there is no moving
 * picture. The header is that of its first second in another container; frames and times are the file's own.
 */
export async function readTransportStream(
  tools: MediaTools,
  file: string,
  signal: AbortSignal | undefined,
): Promise<FoundStream | null> {
  const input = ['-v', 'error', '-nostdin', ...safeInputOptions, '-i', fileAddress(file)];
  const copied = ['-map', '0:v:0', '-c', 'copy'];
  const listing = await runTool(tools.ffmpeg, [...input, '-copyts', ...copied, '-f', 'framecrc', '-'], limits(signal));
  if (signal?.aborted === true) throw cancelledWork();
  const read = readFrameList(listing.stdout);
  if (listing.failed || read === null) return null;
  const header = await readFirstSecond(tools, [...input, ...copied, '-map', '0:a:0?', '-t', '1'], signal);
  const stream = header && findFootage(header);
  if (!header || !stream) return null;
  const { start_pts: _, duration_ts: __, ...own } = stream;
  return {
    header: { ...header, format: { ...header.format, format_name: 'mpegts' } },
    stream: { ...own, time_base: read.timeBase, nb_frames: '' },
    packets: read.packets,
  };
}

const limits = (signal: AbortSignal | undefined) => ({ idleMs: 120_000, maxOutput: 256 * 1024 * 1024, signal });

async function readFirstSecond(
  tools: MediaTools,
  copying: readonly string[],
  signal: AbortSignal | undefined,
): Promise<ProbedHeader | null> {
  const folder = await mkdtemp(path.join(tools.temporary, 'rackside-'));
  try {
    const copy = path.join(folder, 'second.mkv');
    await runTool(tools.ffmpeg, [...copying, '-f', 'matroska', '-y', fileAddress(copy)], limits(signal));
    const output = await runFfprobe(tools, copy, ['-show_streams', '-show_format', '-of', 'json'], signal);
    return output.kind === 'failed' ? null : readHeader(output.stdout);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Reads ffmpeg's list of packets: "#tb 0: 1/90000", then "stream, decoded at, shown at, duration, size, checksum". */
function readFrameList(list: string): { readonly timeBase: string; readonly packets: readonly Packet[] } | null {
  const timeBase = /^#tb 0: (\d+\/\d+)$/m.exec(list)?.[1];
  if (timeBase === undefined) return null;
  const packets = Array.from(list.matchAll(/^0,\s*-?\d+,\s*(-?\d+),\s*(\d+),\s*\d+, 0x/gm), ([, pts, duration]) => ({
    pts: Number(pts),
    durationTicks: Number(duration),
    endByte: null,
    discarded: false,
    damaged: false,
  }));
  return { timeBase, packets };
}
