import { stat } from 'node:fs/promises';
import type { ClipFacts } from '../../../../engine/review/review.ts';
import { frameStartUs } from '../../../../engine/time/frames.ts';
import { type FrameTable, hasConstantRate, meanFrameRate } from '../../../../engine/time/frameTable.ts';
import { ticksToUs } from '../../../../engine/time/moment.ts';
import type { MediaTools } from '../tools/mediaTools.ts';
import { missingClip, refuseClip } from '../tools/refuse.ts';
import { runFfprobe } from '../tools/runFfprobe.ts';
import { checkComplete, refuseUnreadable } from './completeness.ts';
import { buildFrameTable, packetOptions, readPackets } from './frameTimes.ts';
import { type RecordedAt, readRecordedAt } from './recordedAt.ts';
import {
  findFootage,
  judgePlayability,
  type PictureSize,
  type Playability,
  readCaptureFps,
  readHeader,
  readRatio,
  readRotationDeg,
  realTimeFactorOf,
  shownSize,
} from './streams.ts';
import { type FoundStream, isTransportStream, readTransportStream } from './transportStream.ts';

/** Everything that is known of a clip's file without decoding it. */
export type ClipProbe = Playability & {
  /** Width and height as coded; `rotationDeg` clockwise. */
  readonly facts: Omit<ClipFacts, 'sha256'>;
  /** Size of the upright picture. */
  readonly shown: PictureSize;
  readonly table: FrameTable;
  readonly constantRate: boolean;
  /** Mean frames per second, for display. */
  readonly meanFps: number;
  readonly captureFps: number | null;
  /** Capture rate / playback rate. */
  readonly realTimeFactor: number;
  /** ffprobe's name of the container. */
  readonly container: string;
  readonly hasAudio: boolean;
  /** When the film says that it was made; null where it doesn't. */
  readonly recordedAt: RecordedAt | null;
  readonly sizeBytes: number;
};

export type WorkOptions = { readonly signal?: AbortSignal | undefined };

/** Reads what a clip is. Throws a problem (`not-found`, `bad-media`, `cancelled`) with one sentence. */
export async function probeClip(tools: MediaTools, file: string, options: WorkOptions = {}): Promise<ClipProbe> {
  const sizeBytes = await sizeOfClip(file);
  const { header, stream, packets, complaints } = await readClip(tools, file, options.signal);
  const timeBase = readRatio(stream.time_base);
  if (timeBase === null || stream.width === undefined || stream.height === undefined) {
    throw refuseClip(file, 'notUnderstood');
  }
  await checkComplete({ file, sizeBytes, packets, statedFrames: stream.nb_frames, complaints });
  const { start_pts: startTicks = 0, duration_ts: durationTicks } = stream;
  const streamEndTicks = durationTicks === undefined ? null : startTicks + durationTicks;
  const table = buildFrameTable(packets, timeBase, streamEndTicks);
  if (table === null) throw refuseClip(file, 'noTimes');
  if (table.ticks.length < 2) throw refuseClip(file, 'singlePicture');

  const facts = {
    codec: stream.codec_name,
    width: stream.width,
    height: stream.height,
    rotationDeg: readRotationDeg(stream),
    frames: table.ticks.length,
    timeBase,
    ...startOf(table),
    durationUs: ticksToUs(table.endTicks - (table.ticks[0] ?? 0), timeBase),
  };
  const meanFps = meanFrameRate(table);
  const captureFps = readCaptureFps(header, stream);
  return {
    facts,
    shown: shownSize(stream, facts),
    table,
    constantRate: hasConstantRate(table),
    meanFps,
    captureFps,
    realTimeFactor: realTimeFactorOf(captureFps, meanFps),
    container: header.format.format_name,
    hasAudio: header.streams.some(({ codec_type }) => codec_type === 'audio'),
    recordedAt: readRecordedAt(header, stream, Date.now()),
    ...judgePlayability(header, stream),
    sizeBytes,
  };
}

/** When the first frame appears, as facts have it: left out where that is 0. */
function startOf(table: FrameTable): Pick<ClipFacts, 'startUs'> {
  const startUs = frameStartUs(table, 0);
  return startUs === 0 ? {} : { startUs };
}

async function sizeOfClip(file: string): Promise<number> {
  const found = await stat(file).catch(() => null);
  if (found === null) throw missingClip(file);
  if (!found.isFile()) throw refuseClip(file, 'notAFile');
  if (found.size === 0) throw refuseClip(file, 'emptyFile');
  return found.size;
}

type ReadClip = FoundStream & { readonly complaints: string };

async function readClip(tools: MediaTools, file: string, signal: AbortSignal | undefined): Promise<ReadClip> {
  const output = await runFfprobe(tools, file, ['-show_streams', '-show_format', '-of', 'json'], signal);
  if (output.kind === 'failed') {
    const found = (await isTransportStream(file)) ? await readTransportStream(tools, file, signal) : null;
    if (found !== null) return { ...found, complaints: '' };
    throw await refuseUnreadable(file, output.stderr);
  }
  const header = readHeader(output.stdout);
  if (header === null) throw await refuseUnreadable(file, 'unexpected answer of ffprobe');
  const stream = findFootage(header);
  if (stream === null) throw refuseClip(file, 'onlySound');
  const listing = await runFfprobe(tools, file, packetOptions(stream.index), signal);
  if (listing.kind === 'failed') throw await refuseUnreadable(file, listing.stderr);
  return { header, stream, packets: readPackets(listing.stdout), complaints: listing.stderr };
}
