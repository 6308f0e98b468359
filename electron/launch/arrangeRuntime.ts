import { chmod, mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';

/** Does what stock Electron's own default app does: opens the app in the folder it is given. */
const defaultApp = `const { app } = require('electron');
const path = require('node:path');
const { pathToFileURL } = require('node:url');
const folder = path.resolve(process.argv.slice(1).find((word) => !word.startsWith('-')) ?? '.');
const facts = require(path.join(folder, 'package.json'));
app.setAppPath(folder);
app.setName(facts.productName ?? facts.name);
app.setVersion(facts.version);
require(path.join(folder, facts.main));
`;

/**
 * Turns an unpacked distribution into a bare runtime: the binary is called `electron`, and the app inside only opens
 * the folder given as first argument.
 *
 * @param unpacked folder that holds the distribution's only top folder
 * @returns the folder of the runtime
 */
export async function arrangeRuntime(unpacked: string): Promise<string> {
  const [name] = await readdir(unpacked);
  if (name === undefined) throw new Error('the archive is empty');
  const folder = path.join(unpacked, name);
  await rename(path.join(folder, name), path.join(folder, 'electron'));
  await chmod(path.join(folder, 'electron'), 0o755);
  const resources = path.join(folder, 'resources');
  await rm(resources, { recursive: true, force: true });
  const app = path.join(resources, 'app');
  await mkdir(app, { recursive: true });
  await writeFile(
    path.join(app, 'package.json'),
    `${JSON.stringify({ name: 'runtime', version: '1.0.0', main: 'main.cjs' }, null, 2)}\n`,
  );
  await writeFile(path.join(app, 'main.cjs'), defaultApp);
  return folder;
}
