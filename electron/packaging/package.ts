import { mkdir, readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { Arch, build, Platform } from 'electron-builder';
import { buildChanged } from '../launch/buildChanged.ts';
import { rootFolder } from '../launch/folders.ts';
import { builderConfig } from './builderConfig.ts';
import { buildFacts } from './commit.ts';
import { debianPackage } from './debianPackage.ts';
import { finishProgram } from './finishProgram.ts';
import { packagedRuntime } from './packagedRuntime.ts';
import { megabytes, packagesIn, sizesOf } from './sizes.ts';
import { bytesOf, makeStage } from './stage.ts';
import { thisTarget } from './target.ts';
import { tarPackage } from './tarPackage.ts';

/**
 * Makes the packages of this machine's kind. On its own it needs no network: what it makes with the Electron at hand (a folder of
 * zips in ELECTRON_ZIP_DIR, else the fallback runtime of Linux) is an unpacked program, a .deb and a .tar.gz. `--release` has
 * Electron downloaded and makes what the system's own tools make too: AppImage, setup program, disk image.
 */
const { values } = parseArgs({
  options: {
    release: { type: 'boolean', default: false },
    quick: { type: 'boolean', default: false },
    to: { type: 'string', default: path.join(rootFolder, 'packages') },
    'as-version': { type: 'string' },
  },
});

const target = thisTarget();
const output = path.resolve(values.to);
const description = JSON.parse(await readFile(path.join(rootFolder, 'package.json'), 'utf8'));
const version: string = values['as-version'] ?? description.version;
const say = (sentence: string): void => void process.stderr.write(`${sentence}\n`);

await buildChanged();
const runtime = await packagedRuntime(target, values.release ? 'download' : 'fallback');
say(`Packaging Rackside ${version} for ${target.platform} on ${target.architecture} with Electron ${runtime.version}`);
await mkdir(output, { recursive: true });
const stage = await makeStage({
  folder: path.join(output, 'stage'),
  target,
  facts: await buildFacts(),
  version,
  node: runtime.isFallback ? process.execPath : null,
});
const platform = { linux: Platform.LINUX, darwin: Platform.MAC, win32: Platform.WINDOWS }[target.platform];
const architecture = { x64: Arch.x64, arm64: Arch.arm64 }[target.architecture];
let program = '';
const finish = async (folder: string): Promise<void> => {
  program = folder;
  await finishProgram(folder, target, runtime);
};
await build({
  projectDir: rootFolder,
  targets: platform.createTarget(values.release ? undefined : 'dir', architecture),
  config: builderConfig({
    stage,
    runtime,
    output,
    pictures: path.join(import.meta.dirname, 'pictures'),
    finish,
  }),
  publish: 'never',
});
if (target.platform === 'linux') {
  const packing = values.quick ? 'quick' : 'small';
  await debianPackage({ program, version, architecture: target.architecture, output, packing });
  if (!values.quick) await tarPackage(program, version, output);
}
for (const [part, bytes] of await sizesOf(program)) say(`${megabytes(bytes).padStart(10)}  ${part}`);
say(`${megabytes(await bytesOf(program)).padStart(10)}  unpacked`);
for (const name of await packagesIn(output))
  say(`${megabytes(await bytesOf(path.join(output, name))).padStart(10)}  ${name}`);
await rm(path.join(output, 'stage'), { recursive: true });
