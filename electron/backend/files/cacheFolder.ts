import os from 'node:os';
import path from 'node:path';

/** Rackside's folder for what can be made again, under the user's cache folder. It may not be there yet. */
export function cacheFolder(): string {
  return path.join(userCacheFolder(), 'rackside');
}

function userCacheFolder(): string {
  const { XDG_CACHE_HOME: chosen, LOCALAPPDATA: local } = process.env;
  if (chosen !== undefined && path.isAbsolute(chosen)) return chosen;
  if (process.platform === 'win32' && local !== undefined && path.isAbsolute(local)) return local;
  return process.platform === 'darwin'
    ? path.join(os.homedir(), 'Library', 'Caches')
    : path.join(os.homedir(), '.cache');
}
