import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { open } from 'node:fs/promises';
import path from 'node:path';
import { ProblemError } from '../../contract/reply.ts';
import { fileForOwner } from './ownerAlone.ts';

const chunkBytes = 1 << 20;

/** What was copied. */
export type Copied = { readonly sha256: string; readonly sizeBytes: number };

/**
 * Copies a file for its owner alone and hashes what was copied in the same pass, flushed to the disk at the end; reports bytes done.
 *
 * Throws `not-found` when the source can't be read and `cancelled` when the signal says so; what is at `target`
 * then is the caller's to remove.
 */
export async function copyHashing(
  source: string,
  target: string,
  { signal, onBytes }: { readonly signal: AbortSignal; readonly onBytes: (bytes: number) => void },
): Promise<Copied> {
  const from = await open(source, 'r').catch((cause: unknown) => {
    const name = path.basename(source);
    throw new ProblemError('not-found', 'fileUnreadable', { file: name }, { cause });
  });
  try {
    const to = await open(target, 'w', fileForOwner);
    try {
      const hash = createHash('sha256');
      const chunk = new Uint8Array(chunkBytes);
      let sizeBytes = 0;
      for (;;) {
        if (signal.aborted) throw new ProblemError('cancelled', 'cancelled');
        const { bytesRead } = await from.read(chunk, 0, chunkBytes);
        if (bytesRead === 0) break;
        const part = chunk.subarray(0, bytesRead);
        hash.update(part);
        await to.writeFile(part);
        sizeBytes += bytesRead;
        onBytes(sizeBytes);
      }
      await to.sync();
      return { sha256: hash.digest('hex'), sizeBytes };
    } finally {
      await to.close();
    }
  } finally {
    await from.close();
  }
}

/** The SHA-256 of a file's content, as 64 hexadecimal digits. */
export async function hashFile(file: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const chunk of createReadStream(file)) hash.update(chunk);
  return hash.digest('hex');
}
