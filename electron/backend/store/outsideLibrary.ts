import path from 'node:path';
import { ProblemError } from '../../contract/reply.ts';
import type { LibraryFolder } from './folder.ts';

/** Refuses a place to write to that the library keeps something in: `conflict`. */
export function assertOutsideLibrary(folder: LibraryFolder, target: string): void {
  const owned = [folder.clips, folder.pictures, folder.backups, folder.handovers];
  const inOwned = owned.some((each) => target === each || target.startsWith(each + path.sep));
  const isOwned = [folder.database, folder.lock, folder.log, folder.oldLog].some(
    (each) => target === each || target.startsWith(`${each}-`),
  );
  if (!inOwned && !isOwned) return;
  throw new ProblemError(
    'conflict',
    'That place belongs to the library itself, so nothing was written; choose another.',
  );
}
