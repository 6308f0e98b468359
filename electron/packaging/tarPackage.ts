import { execFile } from 'node:child_process';
import path from 'node:path';
import { promisify } from 'node:util';

/** Packs an unpacked program for any Linux, into a folder that can be unpacked anywhere; gives the file. */
export async function tarPackage(program: string, version: string, output: string): Promise<string> {
  const file = path.join(output, `Rackside-${version}-linux-x64.tar.gz`);
  const rename = `--transform=s,^${path.basename(program)},Rackside-${version},`;
  const whose = ['--owner=0', '--group=0', '--numeric-owner'];
  await promisify(execFile)('tar', [
    ...whose,
    rename,
    '-C',
    path.dirname(program),
    '-czf',
    file,
    path.basename(program),
  ]);
  return file;
}
