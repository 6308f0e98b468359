import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import net from 'node:net';
import path from 'node:path';
import { rootFolder } from './folders.ts';

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
