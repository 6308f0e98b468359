import { openBackend } from '../../../../electron/backend/backend.ts';
import { appFolder } from './appFolder.ts';

/** Measures a clip and kills its own process, hard, once the job is as far as was given (0-1). */
const [libraryFolder = '', clipId = '', share = ''] = process.argv.slice(2);
const backend = openBackend({ libraryFolder, appFolder });
backend.onEvent((event) => {
  if (event.name !== 'jobChanged') return;
  const { state, progress } = event.data.job;
  if (state === 'running' && (progress ?? 0) >= Number(share)) process.kill(process.pid, 'SIGKILL');
});
await backend.ask('measures.start', { clipIds: [clipId], joints: false });
