import { existsSync } from 'node:fs';
import path from 'node:path';
import type { BrowserWindow } from 'electron';
import { app, dialog } from 'electron';
import type { PathChooser } from './chosenPaths.ts';

const clipExtensions = ['mp4', 'mov', 'm4v', 'mkv', 'webm', 'avi', '3gp', 'mts', 'ts'];

/** Asks with the platform's own dialogs. */
export function nativeDialogs(window: () => BrowserWindow | null): PathChooser {
  return {
    whereToSave: async ({ name, extension }) => {
      const options = {
        defaultPath: path.join(app.getPath('documents'), `${name}.${extension}`),
        filters: [{ name: extension.toUpperCase(), extensions: [extension] }],
      };
      const parent = window();
      const answer = await (parent === null ? dialog.showSaveDialog(options) : dialog.showSaveDialog(parent, options));
      return answer.canceled || answer.filePath === '' ? null : withExtension(answer.filePath, extension);
    },
    whichClips: async () => {
      const options = {
        properties: ['openFile' as const, 'multiSelections' as const],
        filters: [
          { name: 'Clips', extensions: [...clipExtensions, ...clipExtensions.map((word) => word.toUpperCase())] },
          { name: 'All files', extensions: ['*'] },
        ],
      };
      const parent = window();
      const answer = await (parent === null ? dialog.showOpenDialog(options) : dialog.showOpenDialog(parent, options));
      return answer.canceled ? [] : answer.filePaths;
    },
  };
}

/** Adds the extension a person left out, unless that names a file which the dialog has not asked about. */
function withExtension(file: string, extension: string): string {
  if (path.extname(file) !== '') return file;
  const longer = `${file}.${extension}`;
  return existsSync(longer) ? file : longer;
}
