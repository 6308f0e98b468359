import { stat } from 'node:fs/promises';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import { ProblemError } from '../../../contract/reply.ts';
import type { PictureColours } from '../probe/pictureColours.ts';
import type { PictureSize } from '../probe/streams.ts';
import { soundtrackFormat } from '../read/soundtrack.ts';
import { keptTimes, type MediaTools } from '../tools/mediaTools.ts';
import { shownName } from '../tools/refuse.ts';
import { fileAddress } from '../tools/safeInput.ts';
import { writeWholeFile } from '../tools/writeWholeFile.ts';
import { feedFfmpeg } from './feedFfmpeg.ts';
import { findH264Encoder, type H264Encoder, softwareH264 } from './h264Encoder.ts';
import { timedFrames } from './timedFrames.ts';

export type FrameRate = { readonly numerator: number; readonly denominator: number };

export type VideoToEncode = {
  /** Even on both sides. */
  readonly size: PictureSize;
  readonly rate: FrameRate;
  /** With it, pictures come at the times of its frames, counted from the first; else at the rate. */
  readonly times?: FrameTable | undefined;
  readonly colours: PictureColours;
  /** `yuv420p` planes, limited range; the bytes of one may be used again once the next is asked for. */
  readonly frames: AsyncIterable<Uint8Array>;
  /** `good`: constant quality. Else a bit rate that is held, in bits a second, by the same encoder everywhere. */
  readonly quality: 'good' | { readonly bitsPerSecond: number };
  /** A file that `makeSoundtrack` wrote; null = no sound. */
  readonly soundtrack: string | null;
  /** A file of more bytes is unwanted. */
  readonly mostBytes?: number;
  readonly signal?: AbortSignal | undefined;
};

/** Bits a pixel for encoders that hold no quality: 6 Mbit/s at 1080p30. */
const bitsPerPixel = 0.1;

/**
 * Writes an MP4 that phones play: H.264 and AAC, its index in front, without any metadata. Whole or not at all,
 * and not at all when it turns out `unwanted`. Throws `cancelled`, `disk`, `bad-media`, or what the frames' source throws.
 */
export async function encodeVideo(
  tools: MediaTools,
  output: string,
  video: VideoToEncode,
): Promise<'whole' | 'unwanted'> {
  const encoder = video.quality === 'good' ? await findH264Encoder(tools, video.size) : softwareH264;
  return writeWholeFile(output, { kind: 'mp4', signal: video.signal }, async (unfinished) => {
    const { size, times, signal } = video;
    const frames = times === undefined ? video.frames : timedFrames(video.frames, size, times);
    try {
      await feedFfmpeg(tools, { args: argumentsFor(tools, video, encoder, unfinished), frames, signal });
    } catch (error) {
      throw error instanceof ProblemError ? error : failure(output, error);
    }
    const { mostBytes = Number.POSITIVE_INFINITY } = video;
    return (await stat(unfinished)).size <= mostBytes ? 'whole' : 'unwanted';
  });
}

function argumentsFor(
  tools: MediaTools,
  { size, rate, times, colours, quality, soundtrack }: VideoToEncode,
  encoder: H264Encoder,
  file: string,
) {
  const fps = rate.numerator / rate.denominator;
  const { sampleRate, channels, format } = soundtrackFormat;
  return [
    ...encoder.deviceOptions,
    // Said of what goes in and of what comes out: builds differ in which they heed, and neither may convert.
    ...colourOptions(colours),
    ...(times === undefined
      ? [
          ...['-f', 'rawvideo', '-pix_fmt', 'yuv420p', '-s', `${size.width}x${size.height}`],
          ...['-framerate', `${rate.numerator}/${rate.denominator}`, '-i', 'pipe:0'],
        ]
      : ['-f', 'matroska', '-i', 'pipe:0']),
    ...(soundtrack === null
      ? []
      : ['-f', format, '-ar', String(sampleRate), '-ac', String(channels), '-i', fileAddress(soundtrack)]),
    ...['-map', '0:v:0', ...(soundtrack === null ? [] : ['-map', '1:a:0'])],
    ...['-vf', encoder.filter, '-c:v', encoder.name, ...encoder.options],
    ...['-g', String(Math.max(1, Math.round(2 * fps))), ...colourOptions(colours)],
    ...(times === undefined ? [] : keptTimes(tools.ffmpeg.version, times.timeBase)),
    ...rateOptions(quality, encoder, size.width * size.height * fps * bitsPerPixel),
    ...(soundtrack === null ? ['-an'] : ['-c:a', 'aac', '-b:a', '128k']),
    ...['-map_metadata', '-1', '-map_chapters', '-1'],
    ...['-fflags', '+bitexact', '-flags:v', '+bitexact', '-flags:a', '+bitexact'],
    ...['-movflags', '+faststart', '-f', 'mp4', '-y', fileAddress(file)],
  ];
}

function rateOptions(quality: VideoToEncode['quality'], encoder: H264Encoder, usualBits: number): readonly string[] {
  if (quality === 'good' && encoder.holdsQuality) return ['-crf', '19'];
  const bits = Math.round(quality === 'good' ? usualBits : quality.bitsPerSecond);
  return ['-b:v', String(bits), '-maxrate', String(Math.round(bits * 1.25)), '-bufsize', String(bits * 2)];
}

function colourOptions({ space, primaries, transfer }: PictureColours): readonly string[] {
  return [
    ...['-color_range', 'tv'],
    ...(space === null ? [] : ['-colorspace', space]),
    ...(primaries === null ? [] : ['-color_primaries', primaries]),
    ...(transfer === null ? [] : ['-color_trc', transfer]),
  ];
}

function failure(output: string, cause: unknown): ProblemError {
  const full = cause instanceof Error && /No space left on device/i.test(cause.message);
  return new ProblemError(
    full ? 'disk' : 'bad-media',
    full ? 'diskFullFor' : 'notEncoded',
    { file: shownName(output) },
    { cause },
  );
}
