import { existsSync } from 'node:fs';
import path from 'node:path';
import { app, type BrowserWindow, dialog, type OpenDialogOptions, shell } from 'electron';
import type { Language } from '../../../engine/language/language.ts';
import type { DialogsMessageId } from '../../../engine/wording/english/desk/dialogs.ts';
import { sayDialogs } from '../window/sayWindow.ts';
import type { SystemDialogs } from './systemDialogs.ts';

const clipExtensions = ['mp4', 'mov', 'm4v', 'mkv', 'webm', 'avi', '3gp', 'mts', 'ts'];

const folderWords = {
  handOver: ['handOverTitle', 'handOverButton'],
  openLibrary: ['libraryTitle', 'libraryButton'],
  receive: ['receiveTitle', 'receiveButton'],
  import: ['importTitle', 'importButton'],
  watch: ['watchTitle', 'watchButton'],
} as const;

/** Asks with the platform's own dialogs, in the language that the desk speaks at that moment. */
export function nativeDialogs(window: () => BrowserWindow | null, language: () => Language): SystemDialogs {
  const say = (id: DialogsMessageId): string => sayDialogs(language())(id);
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
          { name: say('clips'), extensions: [...clipExtensions, ...clipExtensions.map((word) => word.toUpperCase())] },
          { name: say('allFiles'), extensions: ['*'] },
        ],
      }),
    whichFolder: async (purpose) => {
      const [title, button] = folderWords[purpose];
      const properties: OpenDialogOptions['properties'] =
        purpose === 'handOver' || purpose === 'openLibrary' ? ['openDirectory', 'createDirectory'] : ['openDirectory'];
      const [folder] = await open({ title: say(title), buttonLabel: say(button), properties });
      return folder ?? null;
    },
    whichSessionFile: async () => {
      const [file] = await open({
        title: say('sessionFileTitle'),
        properties: ['openFile'],
        filters: [{ name: say('sessionFile'), extensions: ['zip', 'json', 'rackside-handover', 'rackside-review'] }],
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
