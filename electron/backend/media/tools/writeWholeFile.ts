import { randomUUID } from 'node:crypto';
import { mkdir, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { ProblemError } from '../../../contract/reply.ts';
import { settleFile } from '../../files/writeWhole.ts';
import { cancelledWork, shownName } from './refuse.ts';

/**
 * Has a file written under a temporary name beside it, `kind` being its ending, and gives it its name when it is whole;
 * nothing is left behind on failure, or when `write` finds it unwanted. Throws what `write` throws, `cancelled`, or `disk`.
 */
export async function writeWholeFile(
  output: string,
  { kind, signal }: { readonly kind: string; readonly signal?: AbortSignal | undefined },
  write: (unfinished: string) => Promise<'whole' | 'unwanted'>,
): Promise<'whole' | 'unwanted'> {
  const folder = path.dirname(path.resolve(output));
  const unfinished = path.join(folder, `.unfinished-${randomUUID()}.${kind}`);
  const stopIfCancelled = () => {
    if (signal?.aborted === true) throw cancelledWork();
  };
  stopIfCancelled();
  try {
    await mkdir(folder, { recursive: true });
    const written = await write(unfinished);
    stopIfCancelled();
    if (written === 'unwanted') return written;
    if ((await stat(unfinished)).size === 0) throw new Error('an empty file was written');
    await settleFile(unfinished, output);
    return written;
  } catch (error) {
    if (error instanceof ProblemError) throw error;
    throw new ProblemError('disk', 'notWrittenBeside', { file: shownName(output) }, { cause: error });
  } finally {
    await rm(unfinished, { force: true }).catch(() => undefined);
  }
}
