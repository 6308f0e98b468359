// Plain JavaScript, so that an old Node can read it and say what is wrong instead of crashing in the native module.

import module from 'node:module';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const nodeApi = Number(process.versions.napi ?? 0);
if (nodeApi < 10) {
  process.stderr.write(
    `Rackside needs Node 22.14 or newer and this is ${process.version}; nothing was changed. ` +
      'Run it through npm (for example "npm start"), which uses the Node that "npm install" brought.\n',
  );
  process.exit(1);
}
const here = path.dirname(fileURLToPath(import.meta.url));
const [target = '', ...rest] = process.argv.slice(2);
const file = path.resolve(here, target);
process.argv = [process.argv[0] ?? '', file, ...rest];
// Without it each command strips the types of hundreds of files again, which takes as long as all the rest.
module.enableCompileCache();
await import(pathToFileURL(file).href);
