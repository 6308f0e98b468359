import { createWriteStream } from 'node:fs';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import yazl from 'yazl';

/** What deflating makes no smaller. */
const packedAlready = /\.(?:mp4|jpe?g|png|pdf|zip)$/i;

/**
 * Writes files of a folder into one zip, a piece at a time; names are UTF-8, with `/`, and every file has the same time.
 * Throws what the disk says, or an AbortError.
 */
export async function zipFiles(
  folder: string,
  names: readonly string[],
  target: string,
  { at, signal }: { readonly at: string; readonly signal?: AbortSignal | undefined },
): Promise<void> {
  const zip = new yazl.ZipFile();
  const mtime = new Date(at);
  for (const name of names) {
    zip.addFile(path.join(folder, ...name.split('/')), name, {
      compress: !packedAlready.test(name),
      mtime,
      mode: 0o100644,
    });
  }
  const failed = new Promise<never>((_, reject) => zip.on('error', reject));
  zip.end();
  await Promise.race([pipeline(zip.outputStream, createWriteStream(target, { flags: 'wx' }), { signal }), failed]);
}
