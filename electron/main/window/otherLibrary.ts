import type { App } from 'electron';
import { afterOpening, keepLibraries, readLibraries } from './keptLibraries.ts';

export type OtherLibraryParts = {
  readonly app: Pick<App, 'relaunch' | 'quit'>;
  /** Where it is kept which library is opened. */
  readonly file: string;
  readonly usual: string;
  /** Asks the person; null = they changed their mind. */
  readonly choose: () => Promise<string | null>;
  /** What this program was started with, without its name and without files to open. */
  readonly args: readonly string[];
};

/** Has the program start again on another library; null = the person is asked which. */
export async function openOtherLibrary(wanted: string | null, parts: OtherLibraryParts): Promise<void> {
  const { app, file, usual, choose, args } = parts;
  const folder = wanted ?? (await choose());
  if (folder === null) return;
  await keepLibraries(file, afterOpening(readLibraries(file), folder, usual));
  app.relaunch({ args: [...args] });
  app.quit();
}
