import { openBackend } from '../../../../electron/backend/backend.ts';
import { appFolder } from './appFolder.ts';

/** Opens the library of a folder, says so, and holds it until it is killed. */
const [libraryFolder = ''] = process.argv.slice(2);
const backend = openBackend({ libraryFolder, appFolder });
const reply = await backend.ask('library.state', {});
process.stdout.write(`${reply.ok ? reply.value.kind : reply.problem.code}\n`);
process.stdin.resume();
