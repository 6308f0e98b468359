import type { Confined } from './leastRights.ts';
import { runTool } from './startTool.ts';

/** What the commands of this room ask of ffmpeg. Builds differ: many come without x264, and some without filters. */
const needs = {
  encoders: ['libx264', 'aac', 'libopus', 'mjpeg', 'rawvideo', 'pcm_s16le'],
  decoders: ['h264', 'hevc', 'vp8', 'vp9', 'mpeg4', 'mjpeg', 'prores', 'aac', 'mp3', 'opus', 'rawvideo', 'pcm_s16le'],
  filters: [
    ...['scale', 'format', 'crop', 'hflip', 'vflip', 'transpose', 'lutyuv', 'setsar'],
    ...['select', 'trim', 'setpts', 'fps', 'tile', 'aresample'],
  ],
} as const;

/** Whether a build has every encoder, decoder and filter that is used. */
export async function hasWhatIsNeeded(ffmpeg: Confined): Promise<boolean> {
  const lists = (['encoders', 'decoders', 'filters'] as const).map(async (list) => {
    const { failed, stdout } = await runTool(ffmpeg, ['-hide_banner', `-${list}`], { timeoutMs: 20_000 });
    const listed = new Set(namesIn(stdout));
    return !failed && needs[list].every((name) => listed.has(name));
  });
  return (await Promise.all(lists)).every((has) => has);
}

/** The names in a list of ffmpeg's: "V....D libx264   words", "TSC scale   V->V   words". */
const namesIn = (list: string): readonly string[] =>
  Array.from(list.matchAll(/^ [A-Z.|]{2,6} (\S+)/gm), ([, name]) => name ?? '');
