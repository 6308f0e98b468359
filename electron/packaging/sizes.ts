import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { bytesOf } from './stage.ts';

/** What a package weighs, part by part, the heaviest first. */
export async function sizesOf(program: string): Promise<readonly (readonly [part: string, bytes: number])[]> {
  const resources = path.join(program, 'resources');
  const backend = path.join(resources, 'backend');
  const modules = path.join(backend, 'node_modules');
  const inModules = await bytesOf(modules);
  const named = {
    'ffmpeg and ffprobe': ['@ffmpeg-installer', '@ffprobe-installer'],
    networks: ['@vladmandic'],
    'running networks': ['onnxruntime-node', 'onnxruntime-common', '@tensorflow'],
    drawing: ['@napi-rs'],
    fonts: ['@fontsource', '@fontsource-variable'],
  };
  const parts = await Promise.all(
    Object.entries(named).map(
      async ([part, folders]) => [part, await sum(folders.map((one) => path.join(modules, one)))] as const,
    ),
  );
  const whole = await bytesOf(program);
  const archive = await bytesOf(path.join(resources, 'app.asar'));
  const ofBackend = await bytesOf(backend);
  const node = await bytesOf(path.join(backend, 'node'));
  const otherModules = inModules - parts.reduce((all, [, bytes]) => all + bytes, 0);
  return [
    ['Electron', whole - archive - ofBackend] as const,
    ['Node', node] as const,
    ...parts,
    ['other packages', otherModules] as const,
    ["Rackside's own code and data", archive + ofBackend - inModules - node] as const,
  ]
    .filter(([, bytes]) => bytes > 0)
    .sort(([, one], [, other]) => other - one);
}

async function sum(places: readonly string[]): Promise<number> {
  return (await Promise.all(places.map(bytesOf))).reduce((all, bytes) => all + bytes, 0);
}

/** Megabytes, as a person reads them. */
export const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;

/** The files of a folder that a person takes away. */
export async function packagesIn(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder);
  return names.filter((name) => /\.(deb|tar\.gz|AppImage|exe|zip|dmg)$/.test(name)).sort();
}
