import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { wholeSbom } from './sbom.ts';

const appFolder = path.resolve(import.meta.dirname, '../..');
const file = path.join(appFolder, 'dist/rackside.cdx.json');
const options = ['sbom', '--sbom-format', 'cyclonedx', '--package-lock-only', '--omit', 'dev'];
// On Windows npm is a script, which only a shell starts; none of the words comes from elsewhere.
const listed = execFileSync('npm', options, {
  cwd: appFolder,
  encoding: 'utf8',
  maxBuffer: 64 * 1024 * 1024,
  shell: process.platform === 'win32',
});
mkdirSync(path.dirname(file), { recursive: true });
writeFileSync(file, `${JSON.stringify(wholeSbom(listed, appFolder), null, 2)}\n`);
process.stderr.write(`Written: ${file}\n`);
