import { open } from 'node:fs/promises';
import type { ProblemError } from '../../contract/reply.ts';
import type { Packet } from './packets.ts';
import { refuseClip } from './refuse.ts';

const copyAgain = 'copy it again from where it was filmed';

/**
 * Refuses a file whose data ends before its index does. Fewer frames than stated alone proves nothing (an edit list
 * leaves frames out): the file must also end where its readable frames end, or the demuxer must say that it did.
 */
export function checkComplete(found: {
  readonly file: string;
  readonly sizeBytes: number;
  readonly packets: readonly Packet[];
  /** Frame count of the index as ffprobe writes it; '' when the container has none. */
  readonly statedFrames: string;
  readonly complaints: string;
}): void {
  const { file, sizeBytes, packets } = found;
  const whole = packets.filter((packet) => !packet.damaged).length;
  const stated = /^\d+$/.test(found.statedFrames) ? Number(found.statedFrames) : null;
  const saidSo = /partial file|File ended prematurely/i.test(found.complaints);
  const lastByte = packets.reduce((end, packet) => Math.max(end, packet.endByte ?? 0), 0);
  const fewer = stated !== null && whole < stated;
  const cut = saidSo || (fewer && (lastByte >= sizeBytes || packets.at(-1)?.damaged === true));
  if (cut) {
    const counted = fewer
      ? `only ${whole} of the ${stated} frames it should hold can be read`
      : 'its data ends too early';
    throw refuseClip(file, `is cut short: ${counted}`, copyAgain);
  }
  if (packets.length === 0) throw refuseClip(file, 'holds no frames', copyAgain);
}

/** The refusal of a file that ffprobe cannot read: cut short where it begins like a video, else no video at all. */
export async function refuseUnreadable(file: string, complaint: string): Promise<ProblemError> {
  const cause = new Error(complaint);
  return (await beginsLikeVideo(file))
    ? refuseClip(file, 'is cut short or damaged: the index of its frames cannot be read', copyAgain, cause)
    : refuseClip(file, 'is not a video, whatever its name says', 'choose a video file', cause);
}

/** ISO media (MP4, MOV) has a box type in bytes 4-8; Matroska and WebM begin with the EBML mark. */
async function beginsLikeVideo(file: string): Promise<boolean> {
  const handle = await open(file).catch(() => null);
  if (handle === null) return false;
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(8), 0, 8, 0);
    const boxes = ['ftyp', 'moov', 'mdat', 'wide', 'free', 'skip'];
    return bytesRead === 8 && (boxes.includes(buffer.toString('latin1', 4)) || buffer.readUInt32BE(0) === 0x1a45dfa3);
  } finally {
    await handle.close();
  }
}
