import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { chmod, cp, mkdir, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { promisify } from 'node:util';
import { rootFolder } from '../launch/folders.ts';
import { bytesOf } from './stage.ts';

const run = promisify(execFile);
const linuxFolder = path.join(import.meta.dirname, 'linux');

export type DebianOrder = {
  /** The unpacked program. */
  readonly program: string;
  readonly version: string;
  readonly architecture: 'x64' | 'arm64';
  readonly output: string;
  /** `quick`: made in seconds, a third larger; for trying out. */
  readonly packing: 'small' | 'quick';
};

/** What the runtime loads from the system; the second names are those of systems with 64-bit time. */
const needed = [
  'libgtk-3-0 | libgtk-3-0t64',
  'libnss3',
  'libasound2 | libasound2t64',
  'libgbm1',
  'libatk-bridge2.0-0 | libatk-bridge2.0-0t64',
  'libxkbcommon0',
];

const debianArchitecture = { x64: 'amd64', arm64: 'arm64' } as const;

/** Packs an unpacked program for Debian and its kin; gives the file. The system's own tool packs it. */
export async function debianPackage({ program, version, architecture, output, packing }: DebianOrder): Promise<string> {
  const root = path.join(output, 'deb');
  await rm(root, { recursive: true, force: true });
  const at = (...names: string[]): string => path.join(root, ...names);
  const home = at('usr', 'lib', 'rackside');
  for (const folder of [
    home,
    at('DEBIAN'),
    at('usr', 'bin'),
    at('usr', 'share', 'applications'),
    at('usr', 'share', 'mime', 'packages'),
    at('usr', 'share', 'doc', 'rackside'),
    at('usr', 'share', 'icons', 'hicolor', 'scalable', 'apps'),
    at('usr', 'share', 'icons', 'hicolor', '256x256', 'apps'),
  ]) {
    await mkdir(folder, { recursive: true });
  }
  // Links instead of copies: nothing of it is changed, and both lie in the same folder of this build.
  await run('cp', ['-al', `${program}/.`, home]);
  await symlink('../lib/rackside/rackside', at('usr', 'bin', 'rackside'));
  const pictures = path.join(rootFolder, 'renderer', 'pictures');
  for (const [from, to] of [
    [path.join(linuxFolder, 'rackside.desktop'), at('usr', 'share', 'applications', 'rackside.desktop')],
    [path.join(linuxFolder, 'rackside.xml'), at('usr', 'share', 'mime', 'packages', 'rackside.xml')],
    [path.join(linuxFolder, 'copyright'), at('usr', 'share', 'doc', 'rackside', 'copyright')],
    [
      path.join(rootFolder, 'electron', 'notices', 'THIRD-PARTY.md'),
      at('usr', 'share', 'doc', 'rackside', 'THIRD-PARTY.md'),
    ],
    [path.join(linuxFolder, 'postinst'), at('DEBIAN', 'postinst')],
    [path.join(pictures, 'mark.svg'), at('usr', 'share', 'icons', 'hicolor', 'scalable', 'apps', 'rackside.svg')],
    [path.join(pictures, 'mark.png'), at('usr', 'share', 'icons', 'hicolor', '256x256', 'apps', 'rackside.png')],
  ] as const) {
    await cp(from, to);
  }
  const kilobytes = Math.ceil((await bytesOf(root)) / 1024);
  const debian = debianArchitecture[architecture];
  await writeFile(at('DEBIAN', 'control'), controlFile(version, debian, kilobytes));
  if (packing === 'small') await writeFile(at('DEBIAN', 'md5sums'), await checksums(root));
  for (const folder of await foldersOf(root)) await chmod(folder, 0o755);
  await chmod(at('DEBIAN', 'postinst'), 0o755);

  const file = path.join(output, `rackside_${version}_${debian}.deb`);
  const compression = packing === 'quick' ? ['-Zzstd', '-z1'] : ['-Zxz', '-z6', '--threads-max=2'];
  await run('dpkg-deb', ['--root-owner-group', ...compression, '--build', root, file]);
  await rm(root, { recursive: true });
  return file;
}

const controlFile = (version: string, architecture: string, kilobytes: number): string => `Package: rackside
Version: ${version}
Architecture: ${architecture}
Maintainer: The authors of Rackside <noreply@rackside.invalid>
Section: video
Priority: optional
Installed-Size: ${kilobytes}
Depends: ${needed.join(', ')}
Description: Review desk for strength-training technique
 Clips of lifts are marked, graded and written up as letters and sheets,
 without an account and without the internet.
`;

async function foldersOf(root: string): Promise<readonly string[]> {
  const entries = await readdir(root, { recursive: true, withFileTypes: true });
  return [
    root,
    ...entries.filter((entry) => entry.isDirectory()).map((entry) => path.join(entry.parentPath, entry.name)),
  ];
}

/** As Debian's own tools check installed files. */
async function checksums(root: string): Promise<string> {
  const entries = await readdir(path.join(root, 'usr'), { recursive: true, withFileTypes: true });
  const lines: string[] = [];
  for (const entry of entries.filter((one) => one.isFile())) {
    const file = path.join(entry.parentPath, entry.name);
    const hash = createHash('md5');
    await pipeline(createReadStream(file), hash);
    lines.push(`${hash.digest('hex')}  ${path.relative(root, file)}\n`);
  }
  return lines.join('');
}
