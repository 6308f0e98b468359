import { chmod, cp, rm } from 'node:fs/promises';
import path from 'node:path';
import { rootFolder } from '../launch/folders.ts';
import { programIn } from './builderConfig.ts';
import { setFuses } from './fuses.ts';
import type { PackagedRuntime } from './packagedRuntime.ts';
import type { Target } from './target.ts';

/** Of the fallback runtime's files: its default app, and a start state of 110 MB for another program, which a fuse turns off. */
const othersFiles = ['resources/app', 'browser_v8_context_snapshot.bin'];

/** Gives an unpacked program its notices, its command and its fuses, before it is signed. */
export async function finishProgram(folder: string, target: Target, { isFallback }: PackagedRuntime): Promise<void> {
  if (isFallback) {
    for (const file of othersFiles) await rm(path.join(folder, file), { recursive: true, force: true });
  }
  const resources =
    target.platform === 'darwin'
      ? path.join(programIn(folder, target), 'Contents', 'Resources')
      : path.join(folder, 'resources');
  for (const notice of ['LICENSE', 'electron/notices/THIRD-PARTY.md'])
    await cp(path.join(rootFolder, notice), path.join(resources, path.basename(notice)));
  if (target.platform === 'linux') {
    const command = path.join(folder, 'rackside');
    await cp(path.join(import.meta.dirname, 'linux', 'rackside.sh'), command);
    await chmod(command, 0o755);
  }
  await setFuses(programIn(folder, target), target);
}
