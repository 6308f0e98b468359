import type { MediaTools } from '../tools/mediaTools.ts';
import { runFfmpeg } from '../tools/runFfmpeg.ts';

/**
 * Copies a clip into an MP4, its pictures and its sound as they are, without anything that tells where, when and with what
 * it was filmed. Throws `cancelled`, `disk`, or `bad-media` where it can't be put into that container.
 */
export async function copyPlainly(
  tools: MediaTools,
  clip: string,
  output: string,
  { sound, signal }: { readonly sound: 'kept' | 'dropped'; readonly signal?: AbortSignal | undefined },
): Promise<void> {
  await runFfmpeg(tools, {
    input: clip,
    inputOptions: [],
    output,
    outputOptions: [
      ...['-map', '0:v:0', ...(sound === 'kept' ? ['-map', '0:a:0?'] : [])],
      ...['-c', 'copy', '-sn', '-map_metadata', '-1', '-map_chapters', '-1', '-fflags', '+bitexact'],
      // Some writers put the camera's own atoms and times into the tracks.
      ...['-flags:v', '+bitexact', '-flags:a', '+bitexact', '-movflags', '+faststart'],
    ],
    writes: 'mp4',
    signal,
  });
}
