import { openBackend } from '../../../../electron/backend/backend.ts';
import { appFolder } from './appFolder.ts';

/** Imports a clip and kills its own process, hard, the moment the job says (or is in) what was given. */
const [libraryFolder = '', sessionId = '', entryId = '', file = '', moment = ''] = process.argv.slice(2);
const backend = openBackend({ libraryFolder, appFolder });
backend.onEvent((event) => {
  if (event.name !== 'jobChanged') return;
  const { state, message } = event.data.job;
  if (state === moment || message?.id === moment) process.kill(process.pid, 'SIGKILL');
});
await backend.ask('clips.import', { sessionId, entryId, paths: [file] });
