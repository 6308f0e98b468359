import { cp, mkdir, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { distFolder, rootFolder } from '../launch/folders.ts';
import { type BuildFacts, buildFactsFile } from '../main/about/buildFacts.ts';
import { loadedPackages } from './loadedPackages.ts';
import { isShipped } from './shippedFiles.ts';
import type { Target } from './target.ts';

/** What a package is made from, laid out as it will lie in the program. */
export type Stage = {
  /** Goes into the archive: the page and the window's host. */
  readonly app: string;
  /** Goes beside the archive, as plain files: the backend, the commands and what they load. */
  readonly resources: string;
};

export type StageOrder = {
  readonly folder: string;
  readonly target: Target;
  readonly facts: BuildFacts;
  readonly version: string;
  /** A Node program for a runtime whose own is too old; null where the runtime hosts the backend itself. */
  readonly node: string | null;
};

const windowFiles = ['main.cjs', 'preload.cjs'];
const backendFiles = ['backend.mjs', 'cli.mjs', 'jointWorker.mjs', 'measureWorker.mjs', 'startPage.js'];

/** Lays out everything that goes into a package, and nothing else. */
export async function makeStage({ folder, target, facts, version, node }: StageOrder): Promise<Stage> {
  await rm(folder, { recursive: true, force: true });
  const [app, resources] = [path.join(folder, 'app'), path.join(folder, 'resources')];
  const backend = path.join(resources, 'backend');
  await mkdir(path.join(app, 'dist'), { recursive: true });
  await mkdir(path.join(backend, 'dist'), { recursive: true });
  const description = await descriptionOf(version);

  await writeFile(path.join(app, 'package.json'), description);
  await writeFile(path.join(app, buildFactsFile), `${JSON.stringify(facts)}\n`);
  for (const file of windowFiles) await cp(path.join(distFolder, file), path.join(app, 'dist', file));
  await cp(path.join(distFolder, 'renderer'), path.join(app, 'dist', 'renderer'), {
    recursive: true,
    filter: (file) => !file.endsWith('.map'),
  });
  const mark = path.join('renderer', 'pictures', 'mark.png');
  await cp(path.join(rootFolder, mark), path.join(app, mark));

  await writeFile(path.join(backend, 'package.json'), description);
  for (const file of backendFiles) await cp(path.join(distFolder, file), path.join(backend, 'dist', file));
  for (const data of ['migrations', 'seeds', 'electron/notices/THIRD-PARTY.md']) {
    await cp(path.join(rootFolder, data), path.join(backend, data), { recursive: true });
  }
  await copyPackages(path.join(backend, 'node_modules'), target);
  if (node !== null) await cp(node, path.join(backend, 'node'));
  return { app, resources };
}

async function descriptionOf(version: string): Promise<string> {
  const { name, productName, description, license, type, main } = JSON.parse(
    await readFile(path.join(rootFolder, 'package.json'), 'utf8'),
  );
  const author = 'The authors of Rackside';
  return `${JSON.stringify({ name, productName, version, description, license, author, type, main }, null, 2)}\n`;
}

async function copyPackages(modules: string, target: Target): Promise<void> {
  for (const { name, folder, place } of loadedPackages(rootFolder, target)) {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    for (const entry of entries) {
      if (!entry.isFile()) continue;
      const file = path.relative(folder, path.join(entry.parentPath, entry.name)).replaceAll(path.sep, '/');
      if (file.startsWith('node_modules/') || !isShipped(name, file, target)) continue;
      await cp(path.join(folder, file), path.join(modules, place, file));
    }
  }
}

/** Bytes of the files below a folder, or of a file; 0 where there is none. */
export async function bytesOf(place: string): Promise<number> {
  const found = await stat(place).catch(() => null);
  if (found === null || found.isFile()) return found?.size ?? 0;
  const entries = await readdir(place, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
  const sizes = await Promise.all(files.map(async (file) => (await stat(file)).size));
  return sizes.reduce((sum, size) => sum + size, 0);
}
