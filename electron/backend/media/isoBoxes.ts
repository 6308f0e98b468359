import type { FileHandle } from 'node:fs/promises';
import { open } from 'node:fs/promises';

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
