import { existsSync } from 'node:fs';
import path from 'node:path';
import { app, type BrowserWindow, dialog, type OpenDialogOptions, shell } from 'electron';
import type { FolderPurpose, SystemDialogs } from './systemDialogs.ts';

const clipExtensions = ['mp4', 'mov', 'm4v', 'mkv', 'webm', 'avi', '3gp', 'mts', 'ts'];

const folderWords: Readonly<Record<FolderPurpose, Pick<OpenDialogOptions, 'title' | 'buttonLabel'>>> = {
  handOver: { title: 'Where to hand over to', buttonLabel: 'Hand over into this folder' },
  receive: { title: 'A handover’s folder', buttonLabel: 'Import' },
};

/** Asks with the platform's own dialogs. */
export function nativeDialogs(window: () => BrowserWindow | null): SystemDialogs {
  const open = async (options: OpenDialogOptions): Promise<readonly string[]> => {
    const parent = window();
    const answer = await (parent === null ? dialog.showOpenDialog(options) : dialog.showOpenDialog(parent, options));
    return answer.canceled ? [] : answer.filePaths;
  };
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
    whichClips: () =>
      open({
        properties: ['openFile', 'multiSelections'],
        filters: [
          { name: 'Clips', extensions: [...clipExtensions, ...clipExtensions.map((word) => word.toUpperCase())] },
          { name: 'All files', extensions: ['*'] },
        ],
      }),
    whichFolder: async (purpose) => {
      const properties: OpenDialogOptions['properties'] =
        purpose === 'handOver' ? ['openDirectory', 'createDirectory'] : ['openDirectory'];
      const [folder] = await open({ ...folderWords[purpose], properties });
      return folder ?? null;
    },
    whichSessionFile: async () => {
      const [file] = await open({
        title: 'A handover or a review file',
        properties: ['openFile'],
        filters: [{ name: 'Handover or review', extensions: ['zip', 'json'] }],
      });
      return file ?? null;
    },
    showInFolder: (path) => shell.showItemInFolder(path),
  };
}

/** Adds the extension a person left out, unless that names a file which the dialog has not asked about. */
function withExtension(file: string, extension: string): string {
  if (path.extname(file) !== '') return file;
  const longer = `${file}.${extension}`;
  return existsSync(longer) ? file : longer;
}
