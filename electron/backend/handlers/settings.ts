import { problemOf } from '../context/problems.ts';
import { measureAllByItself, stopMeasuringByItself } from '../jobs/measureByItself.ts';
import { inTransaction } from '../store/connection.ts';
import { assertOutsideLibrary } from '../store/folder.ts';
import { hasDamagedSettings, readSettings, writeSettings } from '../store/settings.ts';
import type { Handler } from './handler.ts';

export const getSettings: Handler<'settings.get'> = (context) => readSettings(context.library().reading);

export const getDamagedSettings: Handler<'settings.damaged'> = (context) =>
  hasDamagedSettings(context.library().reading);

export const changeSettings: Handler<'settings.change'> = (context, change) => {
  const { writing, folder } = context.library();
  if (typeof change.watchedFolder === 'string') assertOutsideLibrary(folder, change.watchedFolder);
  inTransaction(writing, () => writeSettings(writing, change));
  if (change.measuringPaused === true) context.jobs.pauseMeasuring();
  if (change.measuringPaused === false) context.jobs.goOnMeasuring();
  if (change.measureByItself === false) stopMeasuringByItself(context);
  if (change.measureByItself === true)
    void measureAllByItself(context, () => false).catch((error) => problemOf(error, 'the jobs'));
  context.emit({ name: 'settingsChanged', data: {} });
  return {};
};
