import * as v from 'valibot';

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
