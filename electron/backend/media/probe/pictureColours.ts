import type { MediaTools } from '../tools/mediaTools.ts';
import { runFfprobe } from '../tools/runFfprobe.ts';
import { findFootage, readHeader } from './streams.ts';

/** How a clip encodes colour, in the words of ffmpeg's options; null = it doesn't say. */
export type PictureColours = {
  readonly space: 'bt709' | 'smpte170m' | 'bt470bg' | 'bt2020nc' | null;
  readonly primaries: 'bt709' | 'smpte170m' | 'bt470bg' | 'bt2020' | null;
  readonly transfer: 'bt709' | 'smpte170m' | 'arib-std-b67' | 'smpte2084' | null;
};

const spaces = ['bt709', 'smpte170m', 'bt470bg', 'bt2020nc'] as const;
const primaries = ['bt709', 'smpte170m', 'bt470bg', 'bt2020'] as const;
const transfers = ['bt709', 'smpte170m', 'arib-std-b67', 'smpte2084'] as const;

const oneOf = <Name extends string>(names: readonly Name[], stated: string): Name | null =>
  names.find((name) => name === stated) ?? null;

/** Reads how a clip encodes colour; null for what it doesn't say, or says in words that older encoders don't know. */
export async function readPictureColours(
  tools: MediaTools,
  clip: string,
  signal: AbortSignal | undefined,
): Promise<PictureColours> {
  const output = await runFfprobe(tools, clip, ['-show_streams', '-show_format', '-of', 'json'], signal);
  const header = output.kind === 'read' ? readHeader(output.stdout) : null;
  const stream = header && findFootage(header);
  return {
    space: oneOf(spaces, stream?.color_space ?? ''),
    primaries: oneOf(primaries, stream?.color_primaries ?? ''),
    transfer: oneOf(transfers, stream?.color_transfer ?? ''),
  };
}

/** What a clip's planes mean; where it doesn't say, that follows its height, as in players. */
export const meantSpace = (space: PictureColours['space'], heightPx: number): Exclude<PictureColours['space'], null> =>
  space ?? (heightPx >= 720 ? 'bt709' : 'smpte170m');

/** The luma weights of red and blue (ITU-R BT.601, BT.709, BT.2020). */
export function lumaWeights(
  { space }: PictureColours,
  heightPx: number,
): {
  readonly red: number;
  readonly blue: number;
} {
  switch (meantSpace(space, heightPx)) {
    case 'bt709':
      return { red: 0.2126, blue: 0.0722 };
    case 'bt2020nc':
      return { red: 0.2627, blue: 0.0593 };
    case 'smpte170m':
    case 'bt470bg':
      return { red: 0.299, blue: 0.114 };
  }
}
