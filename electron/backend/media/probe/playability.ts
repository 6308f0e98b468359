import type { ProbedHeader, ProbedStream } from './streams.ts';

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
