import type { PictureSize } from '../probe/streams.ts';
import type { MediaTools } from '../tools/mediaTools.ts';
import { runTool } from '../tools/startTool.ts';

/** How ffmpeg can encode H.264 on this machine. */
export type H264Encoder = {
  /** ffmpeg's name of it. */
  readonly name: string;
  /** Options before the inputs. */
  readonly deviceOptions: readonly string[];
  /** Filters that end with pictures as it takes them. */
  readonly filter: string;
  /** Whether it takes a constant quality in place of a bit rate. */
  readonly holdsQuality: boolean;
  readonly options: readonly string[];
};

const software: H264Encoder = {
  name: 'libx264',
  deviceOptions: [],
  filter: 'format=yuv420p',
  holdsQuality: true,
  options: ['-preset', 'veryfast', '-profile:v', 'high'],
};

/** Hardware encoders, the most common first. */
const hardware: readonly H264Encoder[] = [
  { ...plain('h264_videotoolbox', 'yuv420p'), options: ['-profile:v', 'high'] },
  { ...plain('h264_nvenc', 'yuv420p'), options: ['-profile:v', 'high'] },
  plain('h264_qsv', 'nv12'),
  {
    ...plain('h264_vaapi', 'nv12'),
    deviceOptions: ['-vaapi_device', '/dev/dri/renderD128'],
    filter: 'format=nv12,hwupload',
  },
  plain('h264_mf', 'nv12'),
];

function plain(name: string, pixels: string): H264Encoder {
  return { name, deviceOptions: [], filter: `format=${pixels}`, holdsQuality: false, options: [] };
}

const trialTimeoutMs = 15_000;
const found = new Map<string, Promise<H264Encoder>>();

/**
 * The encoder for pictures of a size: the first in hardware that encodes a frame of that size here, else software. The
 * answer is kept for as long as the process lives.
 */
export function findH264Encoder(tools: MediaTools, size: PictureSize): Promise<H264Encoder> {
  const key = `${tools.ffmpeg.path} ${size.width}x${size.height}`;
  const known = found.get(key) ?? tryAll(tools, size);
  found.set(key, known);
  return known;
}

/** The encoder that every full build of ffmpeg has. */
export const softwareH264 = software;

async function tryAll(tools: MediaTools, size: PictureSize): Promise<H264Encoder> {
  const listed = await output(tools, ['-encoders']);
  for (const encoder of hardware) {
    if (listed?.includes(` ${encoder.name} `) === true && (await encodes(tools, encoder, size))) return encoder;
  }
  return software;
}

/** One frame, encoded and thrown away: a build may name encoders whose device or driver isn't there. */
async function encodes(tools: MediaTools, encoder: H264Encoder, { width, height }: PictureSize): Promise<boolean> {
  const trial = await output(tools, [
    ...encoder.deviceOptions,
    ...['-f', 'lavfi', '-i', `color=c=gray:s=${width}x${height}:r=25`, '-frames:v', '1'],
    ...['-vf', encoder.filter, '-c:v', encoder.name, ...encoder.options, '-b:v', '2M', '-f', 'null', '-'],
  ]);
  return trial !== null;
}

/** What ffmpeg prints; null when it fails. */
async function output(tools: MediaTools, args: readonly string[]): Promise<string | null> {
  const quiet = ['-hide_banner', '-v', 'error', '-nostdin'];
  const { failed, stdout } = await runTool(tools.ffmpeg, [...quiet, ...args], { timeoutMs: trialTimeoutMs });
  return failed ? null : stdout;
}
