import { realpathSync } from 'node:fs';
import path from 'node:path';
import { ProblemError } from '../../contract/reply.ts';
import type { LibraryFolder } from './folder.ts';

/** Refuses a file or folder to write to that the library keeps something in, also through a link to it: `conflict`. */
export function assertOutsideLibrary(folder: LibraryFolder, target: string): void {
  const real = realPath(target);
  const owned = [folder.clips, folder.pictures, folder.backups, folder.handovers].map(realPath);
  const inOwned = owned.some((each) => real === each || real.startsWith(each + path.sep));
  const isOwned = [folder.database, folder.lock, folder.log, folder.oldLog]
    .map(realPath)
    .some((each) => real === each || real.startsWith(`${each}-`));
  if (!inOwned && !isOwned) return;
  throw new ProblemError(
    'conflict',
    'That place belongs to the library itself, so nothing was written; choose another.',
  );
}

/** Where a path leads, links followed; what is not there yet keeps its name in the folder that is. */
function realPath(target: string): string {
  try {
    return realpathSync.native(target);
  } catch {
    const parent = path.dirname(target);
    return parent === target ? target : path.join(realPath(parent), path.basename(target));
  }
}
