import { ProblemError } from '../../../contract/reply.ts';
import { meantSpace, type PictureColours } from '../probe/pictureColours.ts';
import type { PictureSize } from '../probe/streams.ts';
import type { MediaTools } from '../tools/mediaTools.ts';
import { feedFfmpeg } from './feedFfmpeg.ts';

export type JpegsToEncode = {
  readonly size: PictureSize;
  readonly colours: PictureColours;
  /** `yuv420p` planes, limited range; the bytes of one may be used again once the next is asked for. */
  readonly frames: AsyncIterable<Uint8Array>;
  readonly signal?: AbortSignal | undefined;
};

/**
 * Pictures as JPEG files without any metadata, in their order, in one run of ffmpeg. Throws `cancelled`, `bad-media`,
 * or what the frames' source throws.
 */
export async function encodeJpegs(tools: MediaTools, jpegs: JpegsToEncode): Promise<readonly Uint8Array[]> {
  const { size, colours, frames, signal } = jpegs;
  const { files, add } = jpegSplitter();
  // JPEG has one meaning of its planes, BT.601 in full range; only by way of RGB do all builds turn both rightly.
  const filters = [
    `scale=in_range=tv:in_color_matrix=${matrixOf(colours, size.height)}`,
    'format=rgb24',
    'scale=out_color_matrix=bt601:out_range=pc',
    'format=yuvj420p',
    // Without it old builds leave the file's own header out.
    'setsar=1',
  ];
  const args = [
    ...['-f', 'rawvideo', '-pix_fmt', 'yuv420p', '-s', `${size.width}x${size.height}`, '-framerate', '25'],
    ...['-i', 'pipe:0', '-vf', filters.join(','), '-c:v', 'mjpeg', '-q:v', '3'],
    ...['-map_metadata', '-1', '-flags:v', '+bitexact', '-f', 'image2pipe', 'pipe:1'],
  ];
  try {
    await feedFfmpeg(tools, { args, frames, onOutput: add, signal });
  } catch (error) {
    if (error instanceof ProblemError) throw error;
    throw new ProblemError('bad-media', 'stillsNotEncoded', {}, { cause: error });
  }
  return files;
}

/** The name that ffmpeg's scaler has for the meaning of a clip's planes. */
function matrixOf({ space }: PictureColours, heightPx: number): string {
  const names = { bt709: 'bt709', smpte170m: 'bt601', bt470bg: 'bt601', bt2020nc: 'bt2020' } as const;
  return names[meantSpace(space, heightPx)];
}

/** Cuts a stream of JPEG files after each end-of-image marker, which stands nowhere else in files without a thumbnail. */
function jpegSplitter() {
  const files: Uint8Array[] = [];
  let parts: Uint8Array[] = [];
  let last = 0;
  const add = (chunk: Uint8Array) => {
    let from = 0;
    for (let index = 0; index < chunk.length; index += 1) {
      const byte = chunk[index] ?? 0;
      if (last === 0xff && byte === 0xd9) {
        files.push(Buffer.concat([...parts, chunk.subarray(from, index + 1)]));
        parts = [];
        from = index + 1;
      }
      last = byte;
    }
    if (from < chunk.length) parts.push(chunk.subarray(from));
  };
  return { files, add };
}
