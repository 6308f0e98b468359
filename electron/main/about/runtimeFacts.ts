import type { RuntimeFacts } from '../../contract/about.ts';
import { backendHostFor } from '../backend/backendProcess.ts';
import { readBuildFacts } from './buildFacts.ts';

export type RuntimePlace = {
  /** What the runtime was given as the app: an archive or a folder. */
  readonly appPath: string;
  readonly dataFolder: string;
  readonly versions: Readonly<Record<string, string | undefined>>;
};

/** What the window runs in, and what it was made from. A runtime that can't host the backend itself is out of date. */
export function runtimeFacts({ appPath, dataFolder, versions }: RuntimePlace): RuntimeFacts {
  return {
    build: readBuildFacts(appPath),
    electron: versions.electron ?? '',
    chromium: versions.chrome ?? '',
    isOutdated: backendHostFor(versions.napi) === 'fork',
    dataFolder,
  };
}
