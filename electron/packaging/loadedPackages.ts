import { existsSync, readFileSync, realpathSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';
import type { Target } from './target.ts';

const descriptionSchema = v.looseObject({
  name: v.string(),
  dependencies: v.optional(v.record(v.string(), v.string()), {}),
  optionalDependencies: v.optional(v.record(v.string(), v.string()), {}),
  os: v.optional(v.array(v.string())),
  cpu: v.optional(v.array(v.string())),
  libc: v.optional(v.array(v.string())),
});

/** A package that goes into the program. */
export type LoadedPackage = {
  readonly name: string;
  /** Where it lies, and relative to the folder of all packages. */
  readonly folder: string;
  readonly place: string;
};

/** Their code is in the bundles of the page and of the window's host, or they bring the runtime itself. */
const inBundles: ReadonlySet<string> = new Set([
  'd3-array',
  'd3-scale',
  'd3-shape',
  'electron',
  'filenamify',
  'lucide-react',
  'mediabunny',
  'react',
  'react-dom',
  'zustand',
]);

/** What only installing or type checking asks for. */
const neverRun: Readonly<Record<string, readonly string[]>> = {
  'onnxruntime-node': ['adm-zip', 'global-agent'],
};
const isTypes = (name: string): boolean => name.startsWith('@types/') || name === '@webgpu/types';

/** The packages that the backend and the commands load while they run on a machine, each once, and what those need in turn. */
export function loadedPackages(rootFolder: string, target: Target): readonly LoadedPackage[] {
  const top = path.join(rootFolder, 'node_modules');
  const modules = realpathSync(top);
  const found = new Map<string, LoadedPackage>();
  const visit = (folder: string): void => {
    const { name, dependencies, optionalDependencies } = describe(folder);
    for (const needed of Object.keys({ ...dependencies, ...optionalDependencies })) {
      if (isTypes(needed) || neverRun[name]?.includes(needed)) continue;
      const place = placeOf(needed, folder, modules);
      if (place === null) {
        if (needed in optionalDependencies) continue;
        throw new Error(`${name} needs ${needed}, which is not installed`);
      }
      if (found.has(place) || !fits(describe(place), target)) continue;
      found.set(place, { name: needed, folder: place, place: path.relative(modules, place) });
      visit(place);
    }
  };
  const { dependencies } = describe(rootFolder);
  for (const name of Object.keys(dependencies)) {
    if (inBundles.has(name)) continue;
    const folder = path.join(modules, name);
    found.set(folder, { name, folder, place: name });
    visit(folder);
  }
  return [...found.values()];
}

function describe(folder: string): v.InferOutput<typeof descriptionSchema> {
  return v.parse(descriptionSchema, JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')));
}

/** Where Node would find a package from another one. */
function placeOf(name: string, from: string, modules: string): string | null {
  for (let folder = from; folder.startsWith(modules); folder = path.dirname(folder)) {
    const inside = path.join(folder, 'node_modules', name);
    if (existsSync(path.join(inside, 'package.json'))) return inside;
  }
  const beside = path.join(modules, name);
  return existsSync(path.join(beside, 'package.json')) ? beside : null;
}

function fits({ os, cpu, libc }: v.InferOutput<typeof descriptionSchema>, target: Target): boolean {
  if (target.platform === 'linux' && libc !== undefined && !libc.includes('glibc')) return false;
  return (os?.includes(target.platform) ?? true) && (cpu?.includes(target.architecture) ?? true);
}
