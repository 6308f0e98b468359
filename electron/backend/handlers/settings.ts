import { inTransaction } from '../store/connection.ts';
import { assertOutsideLibrary } from '../store/folder.ts';
import { readSettings, writeSettings } from '../store/settings.ts';
import type { Handler } from './handler.ts';

export const getSettings: Handler<'settings.get'> = (context) => readSettings(context.library().reading);

export const changeSettings: Handler<'settings.change'> = (context, change) => {
  const { writing, folder } = context.library();
  if (typeof change.watchedFolder === 'string') assertOutsideLibrary(folder, change.watchedFolder);
  inTransaction(writing, () => writeSettings(writing, change));
  context.emit({ name: 'settingsChanged', data: {} });
  return {};
};
