import { openBackend } from '../../../../electron/backend/backend.ts';
import { appFolder } from './appFolder.ts';

/** Imports a clip that needs a playable copy, and kills its own process, hard, while that is being made. */
const [libraryFolder = '', sessionId = '', entryId = '', file = ''] = process.argv.slice(2);
const backend = openBackend({ libraryFolder, appFolder });
backend.onEvent((event) => {
  if (event.name !== 'jobChanged') return;
  const { kind, progress } = event.data.job;
  if (kind === 'proxy' && (progress ?? 0) > 0) process.kill(process.pid, 'SIGKILL');
});
await backend.ask('clips.import', { sessionId, entryId, paths: [file] });
