import { mkdirSync, rmSync } from 'node:fs';

/**
 * Has the file chooser of GTK note what was chosen in a folder of the program's own: the user's list of recent files is open to every program,
 * and would tell names of trainees and clips. To be called before the app is ready; Windows and macOS note nothing that isn't asked for.
 */
export function keepRecentFilesApart(
  platform: NodeJS.Platform,
  environment: Record<string, string | undefined>,
  folder: string,
): void {
  if (platform === 'linux') environment.XDG_DATA_HOME = folder;
}

/** Empties that folder: nobody needs what was chosen before. */
export function forgetRecentFiles(platform: NodeJS.Platform, folder: string): void {
  if (platform !== 'linux') return;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true, mode: 0o700 });
}
