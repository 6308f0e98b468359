import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { fallbackElectron, fallbackRuntime } from '../launch/fallbackRuntime.ts';
import { rootFolder } from '../launch/folders.ts';
import type { Target } from './target.ts';

/** The Electron that a package is made with. */
export type PackagedRuntime = {
  readonly version: string;
  /** A zip or folder on this machine; null = the builder downloads it. */
  readonly place: string | null;
  /** Its own Node is too old for the library: a package brings one. */
  readonly isFallback: boolean;
};

/**
 * The Electron to package: from the folder of zips that ELECTRON_ZIP_DIR names, else as the caller wishes: downloaded, or the
 * fallback runtime of Linux.
 */
export async function packagedRuntime(target: Target, wish: 'download' | 'fallback'): Promise<PackagedRuntime> {
  const folder = process.env.ELECTRON_ZIP_DIR ?? '';
  if (folder !== '') return fromZips(folder, target);
  if (wish === 'download') return { version: await installedVersion(), place: null, isFallback: false };
  if (target.platform !== 'linux' || target.architecture !== 'x64') {
    throw new Error(
      'There is no fallback runtime for this machine: name a folder with Electron zips in ELECTRON_ZIP_DIR',
    );
  }
  const place = path.dirname(await fallbackRuntime());
  return { version: fallbackElectron, place, isFallback: true };
}

/** The newest Electron in a folder of zips, as Electron names them, for a kind of machine. */
async function fromZips(folder: string, { platform, architecture }: Target): Promise<PackagedRuntime> {
  const pattern = new RegExp(`^electron-v(\\d+\\.\\d+\\.\\d+)-${platform}-${architecture}\\.zip$`);
  const versions = (await readdir(folder)).flatMap((name) => pattern.exec(name)?.[1] ?? []);
  const version = versions.sort((one, other) => one.localeCompare(other, 'en', { numeric: true })).at(-1);
  if (version === undefined) {
    throw new Error(`ELECTRON_ZIP_DIR (${folder}) holds no electron-v…-${platform}-${architecture}.zip`);
  }
  const place = path.resolve(folder, `electron-v${version}-${platform}-${architecture}.zip`);
  return { version, place, isFallback: false };
}

async function installedVersion(): Promise<string> {
  const file = path.join(rootFolder, 'node_modules', 'electron', 'package.json');
  return JSON.parse(await readFile(file, 'utf8')).version;
}
