import { open } from 'node:fs/promises';
import { isTransportStream } from '../probe/transportStream.ts';

/**
 * Whether ffmpeg finds the key frame to begin with when it is sent to a moment of a clip. In MPEG streams, which have no index, it
 * begins wherever it lands and loses every picture up to the next key frame: they have to be decoded from their start.
 */
export const canBeginInside = async (clip: string): Promise<boolean> =>
  !(await isTransportStream(clip)) && !(await isProgramStream(clip));

/** Whether a file begins with a pack header (ISO/IEC 13818-1). */
async function isProgramStream(file: string): Promise<boolean> {
  const handle = await open(file);
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(4), 0, 4, 0);
    return bytesRead === 4 && buffer.readUInt32BE(0) === 0x1ba;
  } finally {
    await handle.close();
  }
}
