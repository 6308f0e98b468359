import * as v from 'valibot';
import type { TurnDeg } from '../../../../engine/framing/framing.ts';
import type { ClipFacts } from '../../../../engine/review/review.ts';

const whole = v.optional(v.pipe(v.number(), v.safeInteger()));
const text = v.optional(v.string(), '');
const tags = v.optional(v.record(v.string(), v.string()), {});

const sideDataSchema = v.object({ rotation: v.optional(v.pipe(v.number(), v.finite())) });

const streamSchema = v.object({
  index: v.pipe(v.number(), v.integer(), v.minValue(0)),
  codec_type: text,
  codec_name: text,
  width: whole,
  height: whole,
  pix_fmt: text,
  color_space: text,
  color_primaries: text,
  color_transfer: text,
  sample_aspect_ratio: text,
  time_base: text,
  nb_frames: text,
  start_pts: whole,
  duration_ts: whole,
  disposition: v.optional(v.object({ attached_pic: v.optional(v.number(), 0) }), {}),
  side_data_list: v.optional(v.array(sideDataSchema), []),
  tags,
});
export type ProbedStream = v.InferOutput<typeof streamSchema>;

const headerSchema = v.object({
  streams: v.optional(v.array(streamSchema), []),
  format: v.object({ format_name: text, tags }),
});
export type ProbedHeader = v.InferOutput<typeof headerSchema>;

/** Parses what ffprobe printed about a file's streams and container; null when it has another shape. */
export function readHeader(json: string): ProbedHeader | null {
  try {
    const parsed = v.safeParse(headerSchema, JSON.parse(json));
    return parsed.success ? parsed.output : null;
  } catch {
    return null;
  }
}

/** The stream that carries the footage: the first moving picture, never a cover picture. */
export function findFootage(header: ProbedHeader): ProbedStream | null {
  return (
    header.streams.find((stream) => stream.codec_type === 'video' && stream.disposition.attached_pic === 0) ?? null
  );
}

/** A ratio as ffprobe writes it ("1/15360", "4:3"), or null when it is none or not positive. */
export function readRatio(written: string): { readonly numerator: number; readonly denominator: number } | null {
  const match = /^(\d{1,15})[/:](\d{1,15})$/.exec(written);
  const numerator = Number(match?.[1] ?? 0);
  const denominator = Number(match?.[2] ?? 0);
  return numerator > 0 && denominator > 0 ? { numerator, denominator } : null;
}

export type PictureSize = { readonly width: number; readonly height: number };

/** The upright picture: its size, and by how much it is turned on top of what the file says. */
export type UprightPicture = PictureSize & { readonly turnDeg?: TurnDeg };

/** The clockwise turn that shows a stream upright. ffprobe states the counter-clockwise angle of the display matrix. */
export function readRotationDeg(stream: ProbedStream): ClipFacts['rotationDeg'] {
  const stated = stream.side_data_list.find((data) => data.rotation !== undefined)?.rotation ?? 0;
  const quarters = Math.round(-stated / 90);
  const turns: readonly ClipFacts['rotationDeg'][] = [0, 90, 180, 270];
  return turns[((quarters % 4) + 4) % 4] ?? 0;
}

/** The size of the upright picture, for square pixels. */
export function uprightSize(facts: Pick<ClipFacts, 'width' | 'height' | 'rotationDeg'>): PictureSize {
  const sideways = facts.rotationDeg === 90 || facts.rotationDeg === 270;
  return sideways ? { width: facts.height, height: facts.width } : { width: facts.width, height: facts.height };
}

/** The size of the upright picture as it is shown, pixels that are not square widened. */
export function shownSize(stream: ProbedStream, facts: ClipFacts): PictureSize {
  const aspect = readRatio(stream.sample_aspect_ratio);
  const width = aspect === null ? facts.width : Math.round((facts.width * aspect.numerator) / aspect.denominator);
  return uprightSize({ width, height: facts.height, rotationDeg: facts.rotationDeg });
}

/** A tag that phones write into their clips. No other tag is known that states the rate itself. */
const captureTag = 'com.android.capture.fps';

/** The camera's capture rate in frames per second where the file states it, else null. */
export function readCaptureFps(header: ProbedHeader, stream: ProbedStream): number | null {
  const written = header.format.tags[captureTag] ?? stream.tags[captureTag];
  const rate = Number(written ?? Number.NaN);
  return Number.isFinite(rate) && rate > 0 && rate <= 100_000 ? rate : null;
}

/**
 * Capture rate / playback rate, 1 when the capture rate is not stated. Cameras miss their nominal rates by a few
 * per cent, so a factor within 5 % of a whole number (or of one over a whole number) is taken as that.
 */
export function realTimeFactorOf(captureFps: number | null, meanFps: number): number {
  if (captureFps === null) return 1;
  const factor = captureFps / meanFps;
  const faster = factor >= 1;
  const ratio = faster ? factor : 1 / factor;
  const nearest = Math.round(ratio);
  const rounded = Math.abs(ratio - nearest) <= 0.05 * nearest ? nearest : ratio;
  const result = faster ? rounded : 1 / rounded;
  return result >= 0.01 && result <= 100 ? result : 1;
}

export type Playability = {
  /** `as-is`: the window plays the file itself; `proxy`: it needs a playable copy. */
  readonly plays: 'as-is' | 'proxy';
  /** Why a proxy is needed, as a clause without a full stop; '' when none is. */
  readonly proxyReason: string;
};

const openCodecs: ReadonlySet<string> = new Set(['vp8', 'vp9', 'av1']);
const eightBit420: ReadonlySet<string> = new Set(['yuv420p', 'yuvj420p']);

/** Whether the window can play a clip as it is. */
export function judgePlayability(header: ProbedHeader, stream: ProbedStream): Playability {
  const reason = proxyReason(header.format.format_name, stream.codec_name, stream.pix_fmt);
  return { plays: reason === '' ? 'as-is' : 'proxy', proxyReason: reason };
}

function proxyReason(container: string, codec: string, pixels: string): string {
  if (!/\b(mov|mp4|matroska|webm)\b/.test(container)) return `the container (${container}) does not play in the window`;
  if (codec !== 'h264' && !openCodecs.has(codec)) return `${codec.toUpperCase()} does not play in every window`;
  if (container.includes('matroska') && codec === 'h264') return 'H.264 in this container does not play in the window';
  if (!eightBit420.has(pixels)) return `its pixel format (${pixels}) does not play in the window`;
  return '';
}
