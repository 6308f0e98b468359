import { openBackend } from '../../../../electron/backend/backend.ts';
import { appFolder } from './appFolder.ts';

/** Prints what a library's state is for whoever runs this. */
const [libraryFolder = ''] = process.argv.slice(2);
const backend = openBackend({ libraryFolder, appFolder });
process.stdout.write(JSON.stringify(await backend.ask('library.state', {})));
await backend.close();
