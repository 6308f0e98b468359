import { inTransaction } from '../store/connection.ts';
import { readSettings, writeSettings } from '../store/settings.ts';
import type { Handler } from './handler.ts';

export const getSettings: Handler<'settings.get'> = (context) => readSettings(context.library().reading);

export const changeSettings: Handler<'settings.change'> = (context, change) => {
  const { writing } = context.library();
  inTransaction(writing, () => writeSettings(writing, change));
  context.emit({ name: 'settingsChanged', data: {} });
  return {};
};
