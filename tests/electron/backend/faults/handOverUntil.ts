import fs from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';
import path from 'node:path';
import { openBackend } from '../../../../electron/backend/backend.ts';
import { appFolder } from './appFolder.ts';

/** Hands a session over and kills its own process, hard, just before or after what it wrote gets its name. */
const [libraryFolder = '', sessionId = '', folder = '', moment = '', zip = ''] = process.argv.slice(2);
const { rename } = fs;
fs.rename = async (from, to) => {
  const isNaming = path.dirname(String(to)) === folder;
  if (isNaming && moment === 'before') process.kill(process.pid, 'SIGKILL');
  await rename(from, to);
  if (isNaming && moment === 'after') process.kill(process.pid, 'SIGKILL');
};
syncBuiltinESMExports();
const backend = openBackend({ libraryFolder, appFolder });
await backend.ask('handover.start', { sessionIds: [sessionId], folder, options: { zip: zip === 'zip' } });
