import { openBackend } from '../../../../electron/backend/backend.ts';
import { appFolder } from './appFolder.ts';

/** Adds flags to a clip as fast as it can and prints the id of each one that was acknowledged, until it is killed. */
const [libraryFolder = '', clipId = ''] = process.argv.slice(2);
const backend = openBackend({ libraryFolder, appFolder });
for (let frame = 0; ; frame = (frame + 1) % 400) {
  const reply = await backend.ask('flags.add', { clipId, criterion: 'depth', severity: 'adjust', reps: 'set', frame });
  process.stdout.write(`${reply.ok ? reply.value.flagId : `refused: ${JSON.stringify(reply.problem)}`}\n`);
}
