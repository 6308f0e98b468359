import type { FileHandle } from 'node:fs/promises';
import { open } from 'node:fs/promises';
import type { ProblemError } from '../../../contract/reply.ts';
import { refuseClip } from '../tools/refuse.ts';
import type { Packet } from './frameTimes.ts';

/**
 * Refuses a file whose data ends before its index does. Fewer frames than stated alone proves nothing, since an edit
 * list leaves frames out: the file itself must end too early, or the demuxer must say that it did.
 */
export async function checkComplete(found: {
  readonly file: string;
  readonly sizeBytes: number;
  readonly packets: readonly Packet[];
  /** Frame count of the index as ffprobe writes it; '' when the container has none. */
  readonly statedFrames: string;
  readonly complaints: string;
}): Promise<void> {
  const { file, sizeBytes, packets, statedFrames } = found;
  const stated = /^[1-9]\d*$/.test(statedFrames) ? Number(statedFrames) : null;
  const endsEarly = await endsBeforeItsBoxes(file, sizeBytes);
  // Builds before 6.0 do not mark a frame that was read in part: it ends where the file does.
  const whole = packets.filter(
    ({ damaged, endByte }) => !damaged && !(endsEarly && endByte !== null && endByte >= sizeBytes),
  ).length;
  const saidSo = /partial file|File ended prematurely/i.test(found.complaints);
  const fewer = stated !== null && whole < stated;
  if (saidSo || (endsEarly && (fewer || stated === null))) {
    throw refuseClip(file, 'cutShort', { counted: fewer ? 'fewer' : 'endsEarly', whole, stated: stated ?? 0 });
  }
  if (packets.length === 0) throw refuseClip(file, 'noFrames');
}

/** The refusal of a file that ffprobe cannot read; one that begins like a video is called cut short or damaged. */
export async function refuseUnreadable(file: string, complaint: string): Promise<ProblemError> {
  const cause = new Error(complaint);
  return (await beginsWithIsoBox(file))
    ? refuseClip(file, 'damagedFile', {}, cause)
    : refuseClip(file, 'noVideo', {}, cause);
}

/** Types of the boxes that an MP4 or MOV file consists of at its top level. */
const topLevel: ReadonlySet<string> = new Set([
  ...['ftyp', 'styp', 'moov', 'moof', 'mdat', 'mfra', 'sidx', 'free', 'skip', 'wide', 'uuid', 'meta', 'pnot', 'udta'],
]);
const mostBoxes = 100_000;

/** True when the file begins with a box of an MP4 or MOV file. */
export async function beginsWithIsoBox(file: string): Promise<boolean> {
  return withFile(file, async (handle) => (await readBox(handle, 0)) !== null);
}

/**
 * True when a top-level box of an MP4 or MOV file states that it ends beyond the end of the file: the file was cut.
 * The boxes are ISO/IEC 14496-12's: 32-bit size and type, 1 = a 64-bit size follows, 0 = up to the end of the file.
 */
export async function endsBeforeItsBoxes(file: string, sizeBytes: number): Promise<boolean> {
  return withFile(file, async (handle) => {
    let at = 0;
    for (let boxes = 0; boxes < mostBoxes && at < sizeBytes; boxes += 1) {
      const size = await readBox(handle, at);
      if (size === null || size === 0) return false;
      at += size;
    }
    return at > sizeBytes;
  });
}

/** Size of the box at a position; 0 = up to the end of the file; null when there is no known box. */
async function readBox(handle: FileHandle, at: number): Promise<number | null> {
  const { buffer, bytesRead } = await handle.read(Buffer.alloc(16), 0, 16, at);
  if (bytesRead < 8 || !topLevel.has(buffer.toString('latin1', 4, 8))) return null;
  const size = buffer.readUInt32BE(0);
  if (size !== 1) return size === 0 || size >= 8 ? size : null;
  const large = bytesRead === 16 ? Number(buffer.readBigUInt64BE(8)) : 0;
  return large >= 16 ? large : null;
}

async function withFile(file: string, read: (handle: FileHandle) => Promise<boolean>): Promise<boolean> {
  const handle = await open(file).catch(() => null);
  if (handle === null) return false;
  try {
    return await read(handle);
  } finally {
    await handle.close();
  }
}
